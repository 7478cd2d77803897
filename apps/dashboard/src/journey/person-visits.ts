import {
  amended,
  amendedAsOf,
  amendmentOf,
  foldVisit,
  type Person,
  personOf,
  type Visit,
  visitEventKinds,
  withAround,
} from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';

/** A visit with what its page shows beside it. */
export interface VisitAndPast {
  readonly visit: Visit;
  /** see {@link personAtVisit} */
  readonly person: Person | undefined;
  /** visits of the same person that were begun before this one, the oldest first */
  readonly earlier: readonly Visit[];
}

/** What visits are made of. */
export const visitKinds = ['visit', ...visitEventKinds] as const;

/** What is read to know a person as of a visit. */
export const personAtVisitKinds = ['person', 'person-amended', 'visit-closed'] as const;

/** The visits that documents tell of, in the order in which they were written down. */
export function visitsIn(documents: readonly StoredDocument[]): readonly Visit[] {
  const events = new Map<string | null, StoredDocument[]>();
  for (const one of documents) {
    const list = events.get(one.about);
    if (list === undefined) events.set(one.about, [one]);
    else list.push(one);
  }
  const begun = documents.filter(({ kind }) => kind === 'visit');
  return begun.map((visit) => foldVisit(visit, events.get(visit.id) ?? []));
}

/** The person of a visit: of one that is closed as the body was known at its end, of an open one as it is known now. */
export function personAtVisit(documents: readonly StoredDocument[], { id, personId }: Visit): Person | undefined {
  const begun = documents.find((one) => one.kind === 'person' && one.id === personId);
  if (begun === undefined) return undefined;
  const amendments = documents
    .filter(({ kind, about }) => kind === 'person-amended' && about === personId)
    .map(amendmentOf);
  const end = documents.find(({ kind, about }) => kind === 'visit-closed' && about === id);
  const person = personOf(begun);
  return end === undefined ? amended(person, amendments) : amendedAsOf(person, amendments, end.at);
}

/** A visit with its person and the visits before it, from all documents of that person; undefined where it is not among them. */
export function visitAndPast(documents: readonly StoredDocument[], visitId: string): VisitAndPast | undefined {
  const visits = visitsIn(documents).map((one) => withAround(one, documents));
  const visit = visits.find(({ id }) => id === visitId);
  if (visit === undefined) return undefined;
  const begun = Date.parse(visit.begunAt);
  const earlier = visits.filter((one) => one.id !== visitId && Date.parse(one.begunAt) < begun);
  return {
    visit,
    person: personAtVisit(documents, visit),
    earlier: earlier.sort((a, b) => Date.parse(a.begunAt) - Date.parse(b.begunAt)),
  };
}
