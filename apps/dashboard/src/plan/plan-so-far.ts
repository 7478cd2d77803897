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
  const person = personIn(documents, visit.personId);
  return person === undefined ? [] : planGivenIn(person, visit);
}

function planGivenIn(person: CasebookPerson, visit: Visit): readonly Entry<PlanItem>[] {
  const { id, plan, planEnded, begunAt } = visit;
  if (plan === undefined || planEnded === true) return [];
  const own = (plan ?? []).flatMap((itemId) => person.planItems.filter((one) => one.id === itemId));
  if ((plan ?? []).length > 0) return own.filter(({ body }) => body.decision !== 'declined');
  const visits = person.visits.filter(
    (one) => one.visit.id !== id && Date.parse(one.visit.begunAt) <= Date.parse(begunAt),
  );
  return planOf({ visits, planItems: person.planItems }, begunAt.slice(0, 10))?.items ?? [];
}

/** What came from home is held against: the plans that were ever taken home, and what is kept of exercises and runs. */
export function keptAround(
  documents: readonly StoredDocument[],
  personId: string,
): Pick<CasebookPerson, 'doneItems' | 'runs'> & { readonly plans: readonly (readonly Entry<PlanItem>[])[] } {
  const person = personIn(documents, personId);
  if (person === undefined) return { doneItems: [], runs: [], plans: [] };
  const plans = person.visits.map(({ visit }) => planGivenIn(person, visit)).filter((plan) => plan.length > 0);
  return { doneItems: person.doneItems, runs: person.runs, plans };
}
