import type { Side } from '@surae/analysis';
import {
  type ClinicContact,
  type Entry,
  endedWithPop,
  type PlanItem,
  setOf,
  soreLegs,
  type Visit,
} from '@surae/casebook';
import {
  type Handout,
  type HandoutLeg,
  type HandoutLine,
  isListed,
  planKey,
  type Stiffness,
  seriesKey,
} from '@surae/exchange';
import { RUN_WHY_CHOICES } from '@surae/shared';
import type { LegsTest } from '../legs/legs-view.ts';
import { scoreFigure } from '../result/score-figure.ts';
import { toldOfEnd } from '../result/summary-sentence.ts';
import { handoutPushes, handoutWeeks } from './handout-tests.ts';

const STIFF: Readonly<Record<string, Stiffness>> = {
  'under-10-minutes': 'under-10',
  '10-to-30-minutes': '10-to-30',
  'over-30-minutes': 'over-30',
};

/** What a leg did, by the number, the bounds and the end that the result page tells; null without a result, and after a pop. */
function legOf(visit: Visit, side: Side): HandoutLeg | null {
  const set = setOf(visit, side);
  const report = set === undefined || endedWithPop(set) ? null : set.report;
  if (report === null) return null;
  if (report.count.attempted === 0) return { told: 'none', value: 0, low: 0, high: 0 };
  const { value, low, high, atLeast } = scoreFigure(report);
  const end = toldOfEnd[report.end.class];
  return { told: end === 'did' && atLeast ? 'at-least' : end, value, low, high };
}

function whole(value: number | null): number | null {
  return value === null ? null : Math.round(value);
}

/** A line of a plan as it is taken home: whole numbers, and words only where no list says them. */
function homeLine(item: PlanItem): HandoutLine {
  const { of, code, what, side, from, until, sets, repetitions, load, tempo, painLimit, perWeek, run, why } = item;
  const isOfList = isListed(item) || of === 'running';
  const isWhyCode = why !== null && Object.hasOwn(RUN_WHY_CHOICES, why);
  return {
    of: isOfList ? of : 'words',
    code: isListed(item) ? code : null,
    what: isOfList ? '' : what,
    side,
    from,
    until,
    sets,
    repetitions,
    holdS: whole(item.holdS),
    tempo: tempo === null ? null : { upS: whole(tempo.upS), topS: whole(tempo.topS), downS: whole(tempo.downS) },
    restS: whole(item.restS),
    load,
    lowestFootDeg: whole(item.lowestFootDeg),
    painLimit,
    perWeek,
    run:
      run === null
        ? null
        : {
            mostS: whole(run.mostS),
            mostM: whole(run.mostM),
            daysBetween: run.daysBetween,
            runS: whole(run.runS),
            walkS: whole(run.walkS),
          },
    why: of === 'running' && isWhyCode ? why : null,
  };
}

/**
 * What somebody takes home from a visit, without a name. Mornings are asked about the sore leg, or both.
 *
 * @param visit - as it was accepted [-]
 * @param contact - whom to ring; null where the clinic did not say [-]
 * @param plan - what they leave the visit with [-]
 * @param tests - of the page of the clinic, for the weeks before; none where they are not read [-]
 * @returns what a code holds [-]
 */
export function handoutOf(
  visit: Visit,
  contact: ClinicContact | null,
  plan: readonly Entry<PlanItem>[],
  tests: readonly LegsTest[] = [],
): Handout {
  const sore = soreLegs(visit.sore);
  const told = (side: Side) => visit.history?.legs[side].irritability;
  const stiff = sore.flatMap((side) => STIFF[told(side)?.stiffness ?? ''] ?? []);
  const order = Object.values(STIFF);
  return {
    day: visit.begunAt.slice(0, 10),
    asked: sore.length === 1 ? sore[0]! : 'both',
    usual: {
      left: told('left')?.painNow ?? null,
      right: told('right')?.painNow ?? null,
      stiffness: stiff.sort((a, b) => order.indexOf(b) - order.indexOf(a))[0] ?? null,
    },
    contact: contact === null ? null : { name: contact.name, telephone: contact.telephone },
    lines: visit.handOver?.lines ?? [],
    legs: { left: legOf(visit, 'left'), right: legOf(visit, 'right') },
    plan: plan.map(({ body }) => homeLine(body)),
    planKey: planKey(plan.map(({ id }) => id)),
    series: seriesKey(visit.personId),
    pushes: handoutPushes(visit),
    weeks: handoutWeeks(tests),
  };
}
