import { MemoryStore, memoryVault, type RecordStore } from '@surae/storage';
import { expect } from 'vitest';
import { backupOf, fileOf } from '../backup-laws.ts';
import { cheapCost, passphrase } from '../cheap-vault.ts';
import type { Oracle } from './oracle.ts';

/** One of a list, by any number; undefined of an empty one. */
export const pick = <T>(list: readonly T[], which: number): T | undefined => list[which % Math.max(1, list.length)];

/** Everything that a store holds is what the oracle says. */
export async function expectSame(store: RecordStore, oracle: Oracle, everDamaged: ReadonlySet<string>): Promise<void> {
  expect(await store.documents({})).toEqual(oracle.whole());
  for (const { id, pieces, sha256, damaged } of oracle.streams) {
    if (!damaged) expect(await store.bytes(id)).toEqual({ id, pieces, sha256 });
  }
  const open = oracle.streams.filter(({ sha256 }) => sha256 === null).map(({ id }) => id);
  expect(await store.openStreams()).toEqual(open);
  const problems = (await store.problems()).filter(({ code }) => code !== 'half-written').map(({ id }) => id);
  expect(problems).toEqual(expect.arrayContaining(oracle.damaged()));
  // a file that was written anew knows what was lost of people who were erased since
  for (const id of problems) expect(everDamaged.has(id)).toBe(true);
}

/** Documents are found by kind, by what they are about and by whose they are, as the oracle finds them. */
export async function expectFound(store: RecordStore, oracle: Oracle, which: number): Promise<void> {
  const subject = pick(oracle.documents, which);
  if (subject === undefined) return;
  const { document, whose } = subject;
  const about = document.about ?? document.id;
  for (const query of [
    { kind: document.kind },
    { about },
    { kind: ['person', document.kind], about: [about, document.id] },
    ...(whose === null ? [] : [{ whose }]),
  ]) {
    expect(await store.documents(query)).toEqual(oracle.whole(query));
  }
  if (!subject.damaged) expect(await store.document(document.id)).toEqual(document);
}

/** Up to where changes were told. */
export interface OracleMark {
  readonly at: string;
  readonly documents: number;
  readonly closed: readonly string[];
}

/** What changed since a mark is what the oracle took since then; gives the next mark. */
export async function expectChanges(store: RecordStore, oracle: Oracle, since: OracleMark | null): Promise<OracleMark> {
  const { documents, streams, mark } = await store.changesSince(since?.at ?? null, 1e6);
  const seen = new Set(since?.closed);
  expect(documents.map(({ document }) => document)).toEqual(
    oracle.whole().filter(({ sequence }) => sequence > (since?.documents ?? 0)),
  );
  expect(documents.map(({ whose }) => whose)).toEqual(
    documents.map(({ document }) => oracle.documents.find((one) => one.document.id === document.id)!.whose),
  );
  expect(streams.map(({ id }) => id)).toEqual(oracle.closed.filter((id) => !seen.has(id)));
  return {
    at: mark,
    documents: Math.max(since?.documents ?? 0, ...oracle.documents.map(({ document }) => document.sequence)),
    closed: [...oracle.closed],
  };
}

/** A backup holds everything that is whole, fills an empty store with it and adds nothing to its own. */
export async function expectBackup(store: RecordStore, oracle: Oracle, secret: string | null): Promise<void> {
  const file = fileOf(await backupOf(store), 4096);
  const streams = oracle.streams.filter(({ damaged }) => !damaged);
  const other = secret === null ? new MemoryStore() : (await memoryVault({ cost: cheapCost }).create(passphrase)).store;
  const report = await other.restore(file, secret === null ? {} : { secret });
  expect(report).toMatchObject({ isWhole: true, refused: [], alreadyThere: 0 });
  const hashes = (await other.documents({})).map(({ hash }) => hash);
  expect(hashes).toEqual(oracle.whole().map(({ hash }) => hash));
  expect(report.streams.whole).toBe(streams.length);
  for (const { id, pieces, sha256 } of streams) expect(await other.bytes(id)).toEqual({ id, pieces, sha256 });
  expect(await store.restore(file)).toMatchObject({ added: 0, refused: [] });
}
