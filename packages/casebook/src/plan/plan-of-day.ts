import type { CasebookPerson } from '../casebook.ts';
import { dayNumber } from '../compare/leg-past.ts';
import type { Entry } from '../entry.ts';
import type { PlanItem } from '../kinds/person-kinds.ts';
import type { Visit } from '../visit.ts';
import { type HeldLine, heldBack } from './held-back.ts';

/** What holds on a day, and the visit in which a clinician confirmed it. */
export interface PlanOfDay {
  readonly visitId: string;
  /** day of that visit, by the calendar of the place */
  readonly since: string;
  /** in the order in which they were kept; those that are over, not begun or taken back are left out */
  readonly items: readonly Entry<PlanItem>[];
  /** lines that would hold, and that what a visit found since stands against */
  readonly held: readonly HeldLine[];
}

/** Whether a line holds on a day: both its ends are days on which it does. */
export function holdsOn({ from, until, decision }: PlanItem, day: string): boolean {
  return decision !== 'declined' && from <= day && (until === null || until >= day);
}

function newest(visits: readonly Visit[]): Visit | undefined {
  return visits.reduce<Visit | undefined>(
    (last, one) => (last === undefined || Date.parse(one.begunAt) >= Date.parse(last.begunAt) ? one : last),
    undefined,
  );
}

/** The newest visit that says what holds: one in which a plan was kept, or the one before was ended. */
function lastPlanned(visits: readonly Visit[]): Visit | undefined {
  return newest(visits.filter(({ plan, planEnded }) => planEnded === true || (plan ?? []).length > 0));
}

/** Lines that were kept in a visit and were not declined or taken back, parted by what the newest safety list since then found. */
function linesOf(
  kept: Visit,
  visits: readonly Visit[],
  planItems: readonly Entry<PlanItem>[],
): Pick<PlanOfDay, 'items' | 'held'> {
  const byId = new Map(planItems.map((one) => [one.id, one]));
  const items = (kept.plan ?? [])
    .flatMap((id) => byId.get(id) ?? [])
    .filter(({ body }) => body.decision !== 'declined');
  const asked = newest(visits.filter(({ safety }) => safety !== null));
  const isLater = asked !== undefined && Date.parse(asked.begunAt) >= Date.parse(kept.begunAt);
  return isLater ? heldBack(items, asked) : { items, held: [] };
}

/**
 * What somebody leaves a visit with, whatever its lines say of when they begin: what was kept in it; where nothing changed, what went
 * on, was not over on its day, and nothing that was found in it stands against; nothing where the plan was ended, or was not asked yet.
 */
export function planAfter(
  { visits, planItems }: Pick<CasebookPerson, 'visits' | 'planItems'>,
  visit: Visit,
): readonly Entry<PlanItem>[] {
  const { id, plan, planEnded, begunAt } = visit;
  if (plan === undefined || planEnded === true) return [];
  const before = visits
    .map((one) => one.visit)
    .filter((one) => one.id !== id && Date.parse(one.begunAt) <= Date.parse(begunAt));
  const upTo = [...before, visit];
  const last = lastPlanned(upTo);
  const day = begunAt.slice(0, 10);
  if (last === undefined) return [];
  const { items } = linesOf(last, upTo, planItems);
  return last.id === id ? items : items.filter(({ body: { until } }) => until === null || until >= day);
}

/**
 * The plan of a person on a day: that of the newest visit up to it in which one was kept. A visit in which nothing changed leaves
 * the plan before it as it is; one that ended the plan leaves none. What no visit confirmed is no part of a plan. What the newest visit
 * with a safety list stands against is held back.
 *
 * @param person - visits and plan items as they count, in their order [-]
 * @param day - of the calendar of the place, such as 2026-03-01 [-]
 * @returns what holds, with no items where all are over; null where no plan was ever kept, or the last one was ended [-]
 * Source: ours
 */
export function planOf(
  { visits, planItems }: Pick<CasebookPerson, 'visits' | 'planItems'>,
  day: string,
): PlanOfDay | null {
  const until = dayNumber(day);
  if (until === null) return null;
  const upTo = visits
    .map(({ visit }) => visit)
    .filter(({ begunAt }) => {
      const on = dayNumber(begunAt);
      return on !== null && on <= until;
    });
  const last = lastPlanned(upTo);
  if (last === undefined || (last.plan ?? []).length === 0) return null;
  const { items, held } = linesOf(last, upTo, planItems);
  return {
    visitId: last.id,
    since: last.begunAt.slice(0, 10),
    items: items.filter(({ body }) => holdsOn(body, day)),
    held: held.filter(({ item: { body } }) => holdsOn(body, day)),
  };
}
