import type { Side } from '@surae/analysis';
import { type CasebookPerson, dayNumber } from '@surae/casebook';
import type { FactsOf, GivenFact, SessionTold } from '@surae/guidance';
import { EXERCISES } from '@surae/shared';
import { plannedDays } from './course-given.ts';
import { easedFrom } from './dose-held.ts';
import { known, missing } from './given-fact.ts';
import { type LegPlan, legPlan, plannedVisits } from './programme-given.ts';

type Past = Pick<CasebookPerson, 'visits' | 'planItems'>;

/** Weeks that a share of the plan is told of [d]. */
const sixWeeks = 42;

function rangeLeft({ lines, place }: LegPlan): GivenFact {
  const left = lines.flatMap(({ body: { code, lowestFootDeg } }) => {
    const lowest = EXERCISES.find((one) => one.code === code)?.lowestDeg;
    return lowest === undefined || lowestFootDeg === null ? [] : [Math.max(0, lowestFootDeg - lowest)];
  });
  return left.length === 0 ? missing('no-level') : known(Math.max(...left), 'plan', place);
}

/** Share of what was planned over six weeks that was done: what has no log may have been done or not, and widens the bounds. */
function shareOfSixWeeks(past: Past, side: Side, sessions: readonly SessionTold[], today: string): GivenFact {
  const now = dayNumber(today);
  if (now === null) return missing('no-plan');
  const spans = plannedVisits(past, side).map((plan, i, all) => ({ plan, until: all[i - 1]?.place.day ?? today }));
  const days = spans.flatMap(({ plan, until }) => plannedDays(plan, sessions, until));
  const lately = days.filter((day) => {
    const on = dayNumber(day);
    return on !== null && on < now && on >= now - sixWeeks;
  });
  if (lately.length === 0) return missing('no-plan');
  const shares = lately.map((day) => sessions.find((one) => one.day === day)?.shareDone ?? null);
  const sum = (open: number): number => shares.reduce<number>((all, one) => all + Math.min(1, one ?? open), 0);
  const [low, high] = [sum(0) / lately.length, sum(1) / lately.length];
  return known(low, 'session-log', { day: today }, { low, high });
}

/**
 * What plans and logs say of the dose of a leg.
 *
 * @param past - of the person, without the visit of today [-]
 * @param side - the leg [-]
 * @param sessions - of the leg [-]
 * @param today - by the calendar of the place [-]
 * @returns facts by their code; none where no plan holds [unit of the fact]
 *
 * Source: ours
 */
export function doseGiven(past: Past, side: Side, sessions: readonly SessionTold[], today: string): FactsOf {
  const plan = legPlan(past, side, today);
  if (plan === null || plan.lines.length === 0) return {};
  const eased = easedFrom(past, side);
  return {
    'dose-eased': eased === null ? missing('no-level') : known(eased.isEased ? 'yes' : 'no', 'plan', plan.place),
    'range-left': rangeLeft(plan),
    'share-six-weeks': shareOfSixWeeks(past, side, sessions, today),
  };
}
