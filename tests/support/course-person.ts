import { type CasebookPerson, casebookOf, countingDocuments } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { type ToldVisit, tellVisits } from './told-visit.ts';

/** A clock that steps a second with every look. */
export function steppingClock(from = '2026-06-01T09:00:00Z'): { isoNow(): string } {
  let seconds = 0;
  return { isoNow: () => new Date(Date.parse(from) + 1000 * seconds++).toISOString() };
}

const somebody = { name: 'A 17', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** Somebody with these visits, and how to write down more and read everything again. */
export async function coursePerson(...visits: readonly ToldVisit[]): Promise<{
  readonly store: MemoryStore;
  readonly book: VisitBook;
  readonly personId: string;
  readonly visitIds: readonly string[];
  readonly read: () => Promise<CasebookPerson>;
}> {
  const store = new MemoryStore();
  const visitIds = await tellVisits(store, somebody, visits);
  const book = new VisitBook(store, steppingClock(), 'test', (documents) =>
    Promise.resolve(countingDocuments(documents)),
  );
  const [person] = await book.people();
  const personId = person.id;
  const read = async (): Promise<CasebookPerson> => casebookOf(await book.log.documents(personId)).people[0];
  return { store, book, personId, visitIds, read };
}
