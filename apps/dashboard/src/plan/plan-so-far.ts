import {
  type CasebookPerson,
  casebookOf,
  type Entry,
  type PlanItem,
  type PlanOfDay,
  planAfter,
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

/** What somebody leaves a visit with, see `planAfter`. */
export function planAfterVisit(documents: readonly StoredDocument[], visit: Visit): readonly Entry<PlanItem>[] {
  const person = personIn(documents, visit.personId);
  return person === undefined ? [] : planAfter(person, visit);
}

/** What came from home is held against: the plans that were ever taken home, and what is kept of exercises and runs. */
export function keptAround(
  documents: readonly StoredDocument[],
  personId: string,
): Pick<CasebookPerson, 'doneItems' | 'runs'> & { readonly plans: readonly (readonly Entry<PlanItem>[])[] } {
  const person = personIn(documents, personId);
  if (person === undefined) return { doneItems: [], runs: [], plans: [] };
  const plans = person.visits.map(({ visit }) => planAfter(person, visit)).filter((plan) => plan.length > 0);
  return { doneItems: person.doneItems, runs: person.runs, plans };
}
