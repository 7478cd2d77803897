import { answerKinds, type CaseloadEntry, caseloadKinds, caseloadOf, caseloadVersion } from '@surae/casebook';
import type { DocumentQuery, Json, OutlineMaker, RecordStore, StoredDocument } from '@surae/storage';

/** Somebody in the list, with the place in it: people stand in the order in which they were added. */
interface PlacedEntry {
  readonly place: number;
  readonly entry: CaseloadEntry;
}

/** Documents as they count. */
type Reading = (query: DocumentQuery) => Promise<readonly StoredDocument[]>;

/** What makes the outline of somebody in the list, and what it follows from. */
const maker: OutlineMaker = {
  made: `caseload ${caseloadVersion}`,
  kinds: [...caseloadKinds, ...answerKinds, 'amendment', 'removal'],
};

/** People who are read one by one; of more of them reading everybody at once is as quick [-]; ours. */
const fewPeople = 20;

/** Entries of these people, of everybody without a list, made of documents. */
async function readEntries(read: Reading, people: readonly string[] | null): Promise<readonly PlacedEntry[]> {
  const queries = people?.map((whose) => ({ whose, kind: caseloadKinds })) ?? [{ kind: caseloadKinds }];
  const documents = (await Promise.all(queries.map(read))).flat();
  const closed = new Set(documents.flatMap(({ kind, about }) => (kind === 'visit-closed' ? [about] : [])));
  const open = documents.filter(({ kind, id }) => kind === 'visit' && !closed.has(id)).map(({ id }) => id);
  const answers = open.length === 0 ? [] : await read({ kind: answerKinds, about: open });
  const places = new Map(documents.map(({ id, sequence }) => [id, sequence]));
  return caseloadOf([...documents, ...answers]).map((entry) => ({ place: places.get(entry.person.id)!, entry }));
}

/**
 * Everybody with their visits. What is kept of it and still holds is taken; the rest is made of documents, and kept for the next
 * time where the store keeps it.
 */
export async function keptCaseload(
  store: Pick<RecordStore, 'outlines' | 'keepOutlines'>,
  read: Reading,
): Promise<readonly CaseloadEntry[]> {
  const { kept, stale, mark } = await store.outlines(maker);
  const people = stale !== null && stale.length <= fewPeople ? stale : null;
  const anew = people?.length === 0 ? [] : await readEntries(read, people);
  if (people?.length !== 0) {
    const outlines = new Map<string, Json>((stale ?? []).map((person) => [person, null]));
    for (const one of anew) outlines.set(one.entry.person.id, JSON.parse(JSON.stringify(one)) as Json);
    // the list stands whether or not it is kept: where it is not, the next one takes longer
    store.keepOutlines(maker.made, outlines, mark).catch(() => undefined);
  }
  const held = people === null ? [] : [...kept.values()].filter((one) => one !== null);
  const all = [...(held as unknown as readonly PlacedEntry[]), ...anew];
  return all.sort((a, b) => a.place - b.place).map(({ entry }) => entry);
}
