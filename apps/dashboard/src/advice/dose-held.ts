import type { Side } from '@surae/analysis';
import type { CasebookPerson, Entry, PlanItem } from '@surae/casebook';
import { type LegPlan, legPlan, plannedVisits } from './programme-given.ts';
import { proposedByOf } from './proposed-by.ts';

type Past = Pick<CasebookPerson, 'visits' | 'planItems'>;

/** Rules that make a dose less, and those that leave it as it is. */
const easing: readonly string[] = ['guidance.step-reduce', 'guidance.step-lightest'];
const keeping: readonly string[] = ['guidance.step-hold', 'guidance.step-wait'];

/** Everything that is a dose of a line, and nothing of when it was written or by whom. */
function doseOf(lines: readonly Entry<PlanItem>[]): string {
  const told = lines.map(({ body }) => {
    const { code, side, sets, repetitions, holdS, tempo, load, lowestFootDeg, perWeek } = body;
    return JSON.stringify([code, side, sets, repetitions, holdS, tempo, load, lowestFootDeg, perWeek]);
  });
  return told.sort().join('\n');
}

/**
 * Day since which the dose of now is planned: the day of the first of the newest plans in a row that hold the same lines for the leg.
 *
 * @param past - of the person, without the visit of today [-]
 * @param side - the leg [-]
 * @param today - by the calendar of the place [-]
 * @returns null where no plan with a line for the leg holds [-]
 *
 * Source: ours
 */
export function doseSince(past: Past, side: Side, today: string): string | null {
  const plan = legPlan(past, side, today);
  if (plan === null || plan.lines.length === 0) return null;
  const dose = doseOf(plan.lines);
  let since = plan.place.day;
  for (const { lines, place } of plannedVisits(past, side)) {
    if (doseOf(lines) !== dose) break;
    since = place.day;
  }
  return since.slice(0, 10);
}

function rulesOf({ lines }: LegPlan, side: Side): readonly string[] {
  return lines.flatMap(({ body }) => {
    const by = proposedByOf(body.proposedBy);
    return by?.leg === side ? [by.rule] : [];
  });
}

/** Whether a dose was made less and is not back yet. */
export interface DoseEased {
  readonly isEased: boolean;
  /** the plan from before it was made less; null where it was not, or none is kept */
  readonly before: LegPlan | null;
}

/** See {@link DoseEased}; null where plans do not say what changed them. */
export function easedFrom(past: Past, side: Side): DoseEased | null {
  const plans = plannedVisits(past, side);
  const at = plans.findIndex((plan) => !rulesOf(plan, side).some((rule) => keeping.includes(rule)));
  const newest = plans[at];
  if (newest === undefined) return null;
  const rules = rulesOf(newest, side);
  if (rules.length === 0) return null;
  if (!rules.some((rule) => easing.includes(rule))) return { isEased: false, before: null };
  const isLess = (plan: LegPlan): boolean => {
    const own = rulesOf(plan, side);
    return own.some((rule) => easing.includes(rule) || keeping.includes(rule));
  };
  return { isEased: true, before: plans.slice(at).find((plan) => !isLess(plan)) ?? null };
}
