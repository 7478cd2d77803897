import type { Person, Visit } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { type ToldVisit, tellVisits } from './told-visit.ts';

/** Somebody whose name and year would be found wherever they are shown. */
const SOMEBODY = { name: 'Nameless <b>', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** The last of these visits with what its pages read beside it. */
export async function made(
  ...visits: readonly ToldVisit[]
): Promise<{ readonly visit: Visit; readonly person: Person; readonly earlier: readonly Visit[] }> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, SOMEBODY, visits);
  const book = new VisitBook(store, { isoNow: () => '2026-12-01T09:00:00.000+01:00' }, 'test');
  const { visit, person, earlier } = (await book.visitAndPast(ids[ids.length - 1]))!;
  return { visit, person: person!, earlier };
}
