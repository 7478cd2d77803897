import {
  type CasebookPerson,
  casebookOf,
  type Entry,
  heldBack,
  type PlanItem,
  type PlanOfDay,
  planAfter,
  planOf,
  type Visit,
} from '@surae/casebook';
import { PLAN_WORDS } from '@surae/shared';
import type { StoredDocument } from '@surae/storage';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** The person of an id with everything of theirs; undefined where there is none. */
export function personIn(documents: readonly StoredDocument[], personId: string): CasebookPerson | undefined {
  return casebookOf(documents).people.find((one) => one.person.id === personId);
}

/**
 * The plan that holds before a visit is planned: what other visits confirmed, as it counts on this day, parted by what this visit
 * found; null where none does.
 */
export function planSoFar(documents: readonly StoredDocument[], visit: Visit, day: string): PlanOfDay | null {
  const person = personIn(documents, visit.personId);
  if (person === undefined) return null;
  const visits = person.visits.filter((one) => one.visit.id !== visit.id);
  const plan = planOf({ visits, planItems: person.planItems }, day);
  if (plan === null) return null;
  const { items, held } = heldBack(plan.items, visit);
  const all = { ...plan, items, held: [...plan.held, ...held] };
  return all.items.length + all.held.length === 0 ? null : all;
}

/** What goes on where nothing changes: nothing is said to, where all of it is held back. */
export function unchangedWords(soFar: PlanOfDay | null): string {
  if (soFar === null || soFar.items.length === 0) return PLAN_WORDS.none.text;
  return fill(PLAN_WORDS.unchanged, { day: dayOf(soFar.since) });
}

/** What somebody leaves a visit with, see `planAfter`. */
export function planAfterVisit(documents: readonly StoredDocument[], visit: Visit): readonly Entry<PlanItem>[] {
  const person = personIn(documents, visit.personId);
  return person === undefined ? [] : planAfter(person, visit);
}

/** How many lines the longest plan had that somebody left an earlier visit with: a calendar may hold as many. */
export function planPlacesBefore(documents: readonly StoredDocument[], visit: Visit): number {
  const person = personIn(documents, visit.personId);
  const lengths = person?.visits.flatMap((one) =>
    one.visit.id === visit.id ? [] : [planAfter(person, one.visit).length],
  );
  return Math.max(0, ...(lengths ?? []));
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
