import {
  defaultSettings,
  type LegFinding,
  type LegsOfVisit,
  legsOfVisit,
  type Side,
  setBlocks,
  testIdentity,
} from '@surae/analysis';
import { AXIS_WORDS } from '@surae/shared';
import type { Person } from '../journey/person.ts';
import type { Visit } from '../journey/visit.ts';
import { dayOf } from '../words/dates.ts';
import { type GroupView, groupView, placeOf } from './group-view.ts';
import { legView } from './leg-view.ts';
import { type PastView, type PastVisit, pastView } from './past-view.ts';
import { type SideView, sideView } from './side-view.ts';
import { disagreements, type LegAnswers } from './together.ts';
import type { ValueWords } from './value-words.ts';
import { dayNumber, type LegOfVisit, type LegPast, legPast, visitLegs } from './visit-legs.ts';

/** What effort, pain and irritability say about one set. */
export interface LegLines {
  readonly side: Side;
  readonly lead: string;
  readonly lines: readonly string[];
}

/** A result held beside the other leg, beside earlier visits and beside groups, in words and marks. */
export interface Comparisons {
  readonly side: SideView;
  /** one of each leg that has a result */
  readonly pasts: readonly PastView[];
  readonly groups: readonly GroupView[];
  readonly legs: readonly LegLines[];
  /** where the three do not say the same */
  readonly together: readonly string[];
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Repetitions as they are told. */
const repetitions: ValueWords = { unit: AXIS_WORDS['score-unit'].text, decimals: 0, isCount: true };

function pastVisit({ visit, leg }: LegOfVisit, u: number | null): PastVisit {
  const { report, protocol, features, side } = leg;
  return {
    result: {
      day: dayNumber(visit.begunAt),
      side,
      value: report.count.scored,
      unit: '1',
      convention: 'scored repetitions',
      identity: testIdentity(report, protocol, features),
      blocks: setBlocks(report),
      testsBefore: leg.facts.testsBefore,
      inFlare: leg.facts.inFlare,
    },
    when: dayOf(visit.begunAt),
    u,
  };
}

function pastOf(side: Side, { now, alike, unlike, course }: LegPast, { value }: LegFinding): PastView {
  const told = (one: LegOfVisit): PastVisit => pastVisit(one, value.u);
  return pastView({
    side,
    now: told(now),
    alike: alike.map(told),
    unlike: unlike.map(told),
    course,
    words: repetitions,
  });
}

/** The verdict about a leg, whichever of the two stands above the line; null where there is no ratio. */
function lessOf(side: Side, { comparison }: LegsOfVisit): LegAnswers['less'] {
  if (comparison.kind === 'blocked') return null;
  return comparison.underLine.find((one) => one.side === side)?.verdict ?? null;
}

function answersOf(side: Side, found: LegsOfVisit, past: LegPast | undefined): LegAnswers {
  const finding = found.findings[side];
  const outcome = past?.course?.changes[0]?.outcome;
  return {
    less: lessOf(side, found),
    change: outcome?.kind === 'change' ? { value: outcome.change.value, zone: outcome.detectable.zone } : null,
    places:
      finding?.reference.kind === 'references'
        ? finding.reference.references.map((one) => placeOf(finding.value.value, finding.value.u, one))
        : [],
  };
}

/** The result of a visit beside the other leg, the earlier visits of the person (the oldest first) and published groups. */
export function comparisonsOf(visit: Visit, person: Person, earlier: readonly Visit[]): Comparisons {
  const legs = visitLegs(visit, person, earlier);
  const found = legsOfVisit(legs, {}, defaultSettings().judging);
  const pasts = { left: legPast(visit, 'left', earlier), right: legPast(visit, 'right', earlier) };
  const each = <Value>(make: (side: Side, finding: LegFinding) => Value): readonly Value[] =>
    sides.flatMap((side) => {
      const finding = found.findings[side];
      return finding === null ? [] : [make(side, finding)];
    });
  const value = (side: Side): number | null => found.findings[side]?.value.value ?? null;
  return {
    side: sideView({
      comparison: found.comparison,
      values: { left: value('left'), right: value('right') },
      zone: found.zone,
      error: found.reliability?.source ?? null,
      underOthers: found.underOthers,
      hangsOnReliability: found.hangsOnReliability,
      words: repetitions,
    }),
    pasts: sides.flatMap((side) => {
      const [past, finding] = [pasts[side], found.findings[side]];
      return past === undefined || finding === null ? [] : [pastOf(side, past, finding)];
    }),
    groups: each((side, { value: { value: own, u }, reference }) =>
      groupView({ side, value: own, u, reference, words: repetitions }),
    ),
    legs: each((side, finding) => ({ side, ...legView(finding, legs.legs[side]?.facts.sore ?? null) })),
    together: disagreements({
      left: answersOf('left', found, pasts.left),
      right: answersOf('right', found, pasts.right),
    }),
  };
}
