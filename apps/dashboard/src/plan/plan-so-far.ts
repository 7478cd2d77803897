import {
  type CasebookPerson,
  casebookOf,
  type Entry,
  type PlanItem,
  type PlanOfDay,
  planOf,
  type Visit,
} from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';

function personIn(documents: readonly StoredDocument[], personId: string): CasebookPerson | undefined {
  return casebookOf(documents).people.find((one) => one.person.id === personId);
}

/** The plan that holds before a visit is planned: what other visits confirmed, as it counts on this day; null where none does. */
export function planSoFar(
  documents: readonly StoredDocument[],
  { id, personId }: Pick<Visit, 'id' | 'personId'>,
  day: string,
): PlanOfDay | null {
  const person = personIn(documents, personId);
  if (person === undefined) return null;
  const visits = person.visits.filter(({ visit }) => visit.id !== id);
  const plan = planOf({ visits, planItems: person.planItems }, day);
  return plan === null || plan.items.length === 0 ? null : plan;
}

/**
 * The plan that somebody leaves a visit with: the one that was kept in it, or, where nothing changed, the one that went on; none
 * before the plan was asked, and none where it was ended.
 */
export function planAfterVisit(documents: readonly StoredDocument[], visit: Visit): readonly Entry<PlanItem>[] {
  const { id, personId, plan, planEnded, begunAt } = visit;
  const person = plan === undefined || planEnded === true ? undefined : personIn(documents, personId);
  if (person === undefined) return [];
  const own = (plan ?? []).flatMap((itemId) => person.planItems.filter((one) => one.id === itemId));
  if ((plan ?? []).length > 0) return own.filter(({ body }) => body.decision !== 'declined');
  const visits = person.visits.filter(
    (one) => one.visit.id !== id && Date.parse(one.visit.begunAt) <= Date.parse(begunAt),
  );
  return planOf({ visits, planItems: person.planItems }, begunAt.slice(0, 10))?.items ?? [];
}
