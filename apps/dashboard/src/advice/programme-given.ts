import type { Side } from '@surae/analysis';
import { type CasebookPerson, dayNumber, type Entry, type PlanItem, planOf, type Visit } from '@surae/casebook';
import type { FactsOf, GivenFact } from '@surae/guidance';
import { ASKED_FACTS, LEVELS } from '@surae/shared';
import { known, missing, type Place } from './given-fact.ts';
import { proposedByOf } from './proposed-by.ts';

type Past = Pick<CasebookPerson, 'visits' | 'planItems'>;

/** Exercises of the plan that holds on a day, for a leg, those held back for now among them. */
export interface LegPlan {
  readonly place: Place;
  readonly lines: readonly Entry<PlanItem>[];
}

function isFor(side: Side): (entry: Entry<PlanItem>) => boolean {
  return ({ body }) => body.of === 'exercise' && (body.side === side || body.side === 'both');
}

/** See {@link LegPlan}; null where no plan holds. */
export function legPlan(past: Past, side: Side, day: string): LegPlan | null {
  const plan = planOf(past, day);
  if (plan === null) return null;
  const lines = [...plan.items, ...plan.held.map(({ item }) => item)].filter(isFor(side));
  return { place: { day: plan.since, visitId: plan.visitId }, lines };
}

/** Visits that kept a plan, up to the last one that ended one, the newest first; each with its lines of the leg. */
export function plannedVisits(
  { visits, planItems }: Past,
  side: Side,
): readonly (LegPlan & { readonly visit: Visit })[] {
  const found: (LegPlan & { readonly visit: Visit })[] = [];
  for (const { visit } of visits.toReversed()) {
    if (visit.planEnded === true) break;
    if ((visit.plan ?? []).length === 0) continue;
    const lines = planItems.filter((one) => visit.plan?.includes(one.id) === true && one.body.decision !== 'declined');
    found.push({ visit, place: { day: visit.begunAt, visitId: visit.id }, lines: lines.filter(isFor(side)) });
  }
  return found;
}

/** Code of the level that the lines of a leg are of, by what was kept with them; null where it is not said. */
function levelIn(lines: readonly Entry<PlanItem>[], side: Side): string | null {
  const told = lines.map(({ body }) => proposedByOf(body.proposedBy)).filter((one) => one?.leg === side);
  return told.find((one) => one?.level != null)?.level ?? null;
}

/** Code of the level that is being done; null where it is not known. */
export function levelNow(past: Past, side: Side, day: string): string | null {
  const plan = legPlan(past, side, day);
  return plan === null ? null : levelIn(plan.lines, side);
}

function daysFrom(day: string, today: string): number {
  return Math.max(0, (dayNumber(today) ?? 0) - (dayNumber(day) ?? 0));
}

/** Plans in a row that were of one level, the newest first. */
function plansOfLevel(past: Past, side: Side, code: string | null): ReturnType<typeof plannedVisits> {
  const planned = plannedVisits(past, side);
  const until = planned.findIndex((one) => levelIn(one.lines, side) !== code);
  return until < 0 ? planned : planned.slice(0, until);
}

/** Day since which the level of now is planned; null where no plan or no level is known. */
export function levelSince(past: Past, side: Side, day: string): string | null {
  const code = levelNow(past, side, day);
  return code === null ? null : (plansOfLevel(past, side, code).at(-1)?.place.day.slice(0, 10) ?? null);
}

function repetitionsLeft(plan: LegPlan, code: string | null): GivenFact {
  const level = LEVELS.find((one) => one.code === code);
  if (level === undefined) return missing('no-level');
  const left = plan.lines.flatMap(({ body }) => {
    const dose = level.lines.find(({ exercise }) => exercise === body.code);
    const most = dose?.repetitions?.[1];
    if (most === undefined || body.repetitions === null) return [];
    // where the load is as heavy as can be lifted so often, the schedule sets how often
    return [dose?.load.kind === 'repetition-maximum' ? 0 : Math.max(0, most - body.repetitions)];
  });
  return left.length === 0 ? missing('no-level') : known(Math.max(...left), 'plan', plan.place);
}

/** Facts that nothing that is kept of a visit or a plan says yet. */
const noted: readonly string[] = [
  'level-two-met',
  'heavy-slow-week',
  'dose-eased',
  'week-step-due',
  'range-left',
  'load-left',
  'speed-left',
  'impact-left',
  'return-criteria',
  'share-six-weeks',
  'changed-six-weeks',
  'important-change',
  'missed-asked',
  'last-load',
  'recovery-days',
  'pain-brisk-walk',
  'days-stable',
  'pain-twenty-hops',
  'rise-after-hops',
  'ratio-allowed',
  'side-ratio',
  'push-target-set',
  'push-of-target',
  'days-usual-training',
  'worst-morning-lately',
  'questionnaire-changed',
  'endurance-in-reference',
  'strength-in-reference',
  'full-return-met',
];

/**
 * What the plans that were kept say of a leg. That none was kept here does not say that none is done.
 *
 * @param past - of the person, without the visit of today [-]
 * @param side - the leg [-]
 * @param today - by the calendar of the place [-]
 * @returns facts by their code [unit of the fact]
 *
 * Source: ours
 */
export function programmeGiven(past: Past, side: Side, today: string): FactsOf {
  const plan = legPlan(past, side, today);
  const isAsked = (code: string): boolean => ASKED_FACTS.some(({ fact }) => fact === code);
  const nowhere = Object.fromEntries(noted.map((code) => [code, missing(isAsked(code) ? 'not-asked' : 'not-noted')]));
  if (plan === null) {
    const none = missing('no-plan');
    const open = { 'programme-begun': none, 'level-now': none, 'days-at-level': none };
    return { ...nowhere, ...open, 'days-in-programme': none, 'repetitions-left': none };
  }
  const { place, lines } = plan;
  if (lines.length === 0) {
    const none = missing('no-plan');
    const begun = known('no', 'plan', place);
    return {
      ...nowhere,
      'programme-begun': begun,
      'level-now': none,
      'days-at-level': none,
      'days-in-programme': none,
      'repetitions-left': none,
    };
  }
  const code = levelIn(lines, side);
  const level = LEVELS.find((one) => one.code === code);
  const planned = plannedVisits(past, side);
  const ofLevel = plansOfLevel(past, side, code);
  const inProgramme = planned.filter((one) => one.lines.length > 0);
  const since = (list: typeof planned): GivenFact => {
    const first = list.at(-1);
    return first === undefined ? missing('no-plan') : known(daysFrom(first.place.day, today), 'plan', first.place);
  };
  return {
    ...nowhere,
    'programme-begun': known('yes', 'plan', place),
    'level-now': level === undefined ? missing('no-level') : known(level.number, 'plan', place),
    'days-at-level': level === undefined ? missing('no-level') : since(ofLevel),
    'days-in-programme': since(inProgramme),
    'repetitions-left': repetitionsLeft(plan, code),
  };
}
