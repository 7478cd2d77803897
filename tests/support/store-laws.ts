import { createHash } from 'node:crypto';
import type { Json, NewDocument, RecordStore, StoredDocument } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from './runs.ts';

/** A document of a kind, with everything else plain. */
export function note(body: Json, changes: Partial<NewDocument> = {}): NewDocument {
  return {
    kind: 'note',
    schema: 1,
    about: null,
    author: 'a tester',
    at: '2026-03-01T09:30:00.000+01:00',
    body,
    ...changes,
  };
}

/** Bytes of short texts, as pieces of a recording. */
export function pieces(...texts: string[]): Uint8Array[] {
  return texts.map((text) => new TextEncoder().encode(text));
}

/** SHA-256 by Node, over all pieces. */
export function hashByNode(parts: readonly Uint8Array[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest('hex');
}

const arbitraryJson = fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<Json>;

/** What every store of records keeps to, whatever it stands on. */
export function storeLaws(open: () => Promise<RecordStore>): void {
  describe('documents', () => {
    test('come back as they were added, with an id, a place and a hash', async () => {
      const store = await open();
      const given = note({ b: [1, null, 'two'], a: { deep: true } }, { about: 'p1' });
      const stored = await store.add(given);
      expect(stored).toMatchObject(given);
      expect(stored.id).toMatch(/^[0-9a-f]{32}$/);
      expect(await store.document(stored.id)).toEqual(stored);
      expect(await store.documents({ kind: 'note' })).toEqual([stored]);
      // by hand: keys in order, no blanks, hash and place left out
      const text =
        `{"about":"p1","at":"2026-03-01T09:30:00.000+01:00","author":"a tester",` +
        `"body":{"a":{"deep":true},"b":[1,null,"two"]},"id":"${stored.id}","kind":"note","schema":1}`;
      expect(stored.hash).toBe(hashByNode(pieces(text)));
    });

    test('are listed in the order in which they were added, by kind and by what they are about', async () => {
      const store = await open();
      const added: StoredDocument[] = [];
      for (const [kind, about] of [
        ['visit', 'p2'],
        ['visit', 'p1'],
        ['person', null],
        ['visit', 'p2'],
        ['note', 'p2'],
      ] as const) {
        added.push(await store.add(note(added.length, { kind, about })));
      }
      const bodies = async (query: Parameters<RecordStore['documents']>[0]): Promise<Json[]> =>
        (await store.documents(query)).map(({ body }) => body);
      expect(await bodies({ kind: 'visit' })).toEqual([0, 1, 3]);
      expect(await bodies({ kind: 'visit', about: 'p2' })).toEqual([0, 3]);
      expect(await bodies({ kind: 'person' })).toEqual([2]);
      expect(await bodies({ kind: 'visit', about: 'nobody' })).toEqual([]);
      expect(await bodies({ kind: 'nothing' })).toEqual([]);
      const places = added.map(({ sequence }) => sequence);
      expect(places).toEqual([...places].sort((a, b) => a - b));
      expect(new Set(places).size).toBe(5);
    });

    test('that belong together are kept in their order, all of them or none', async () => {
      const store = await open();
      const given = [note(1, { about: 'p1' }), note(2, { kind: 'visit' }), note(3)];
      const stored = await store.addAll(given);
      expect(stored).toMatchObject(given);
      expect(await store.documents({ kind: ['note', 'visit'] })).toEqual(stored);
      // an empty name is nobody's: the one before it is not kept either
      await expect(store.addAll([note(4), note(5, { whose: '' })])).rejects.toThrow(RangeError);
      expect(await store.documents({ kind: ['note', 'visit'] })).toHaveLength(3);
      expect(await store.addAll([])).toEqual([]);
    });

    test('that are equal are kept twice, each under an id of its own', async () => {
      const store = await open();
      const all = await Promise.all(Array.from({ length: 40 }, () => store.add(note('same'))));
      expect(new Set(all.map(({ id }) => id)).size).toBe(40);
      expect(new Set(all.map(({ hash }) => hash)).size).toBe(40);
      expect(await store.documents({ kind: 'note' })).toHaveLength(40);
    });

    test('stay as they are when what was given or what came back is changed', async () => {
      const store = await open();
      const body = { list: [1] };
      const stored = await store.add(note(body));
      body.list.push(2);
      (stored.body as unknown as { list: number[] }).list.push(3);
      const [listed] = await store.documents({ kind: 'note' });
      (listed.body as unknown as { list: number[] }).list.push(4);
      expect((await store.document(stored.id))?.body).toEqual({ list: [1] });
    });

    test('of an id that nobody has are undefined', async () => {
      expect(await (await open()).document('0123')).toBeUndefined();
    });

    test('of any JSON come back equal and whole', async () => {
      const store = await open();
      await fc.assert(
        fc.asyncProperty(arbitraryJson, async (body) => {
          const { id } = await store.add(note(body));
          // negative zero is no JSON
          expect((await store.document(id))?.body).toEqual(JSON.parse(JSON.stringify(body)));
        }),
        runs(40, 400),
      );
      expect(await store.problems()).toEqual([]);
    });

    test('can neither be overwritten nor taken away: the store has no such call', async () => {
      const store = await open();
      const calls = Object.getOwnPropertyNames(Object.getPrototypeOf(store) as object);
      expect(calls.filter((name) => /put|set|update|delete|remove|clear/i.test(name))).toEqual([]);
    });
  });

  describe('streams of bytes', () => {
    test('hold their pieces in order, and a hash over all of them once closed', async () => {
      const store = await open();
      const parts = pieces('a set ', 'is ', 'recorded');
      const writer = await store.openBytes('set');
      for (const part of parts) await writer.append(part);
      expect(await store.bytes(writer.id)).toEqual({ id: writer.id, pieces: parts, sha256: null });
      const hash = hashByNode(parts);
      expect(await writer.close()).toBe(hash);
      expect(await store.bytes(writer.id)).toEqual({ id: writer.id, pieces: parts, sha256: hash });
      expect(await store.problems()).toEqual([]);
    });

    test('keep the order of pieces that nobody waited for', async () => {
      const store = await open();
      const writer = await store.openBytes('set');
      const parts = pieces(...Array.from({ length: 30 }, (_, i) => `piece ${i}`));
      const done = parts.map((part) => writer.append(part));
      const hash = writer.close();
      await Promise.all(done);
      expect((await store.bytes(writer.id))?.pieces).toEqual(parts);
      expect(await hash).toBe(hashByNode(parts));
    });

    test('are copies: what was given may be used again', async () => {
      const store = await open();
      const writer = await store.openBytes('set');
      const bytes = Uint8Array.of(1, 2, 3);
      const wider = Uint8Array.of(9, 4, 5, 9);
      const writing = [writer.append(bytes), writer.append(wider.subarray(1, 3))];
      bytes.fill(0);
      wider.fill(0);
      await Promise.all(writing);
      const kept = await store.bytes(writer.id);
      expect(kept?.pieces).toEqual([Uint8Array.of(1, 2, 3), Uint8Array.of(4, 5)]);
      kept!.pieces[0].fill(7);
      expect((await store.bytes(writer.id))?.pieces[0]).toEqual(Uint8Array.of(1, 2, 3));
    });

    test('that were never closed are listed, oldest first', async () => {
      const store = await open();
      const [first, second, third] = [
        await store.openBytes('1'),
        await store.openBytes('2'),
        await store.openBytes('3'),
      ];
      await first.append(Uint8Array.of(1));
      expect(await store.openStreams()).toEqual([first.id, second.id, third.id]);
      await second.close();
      expect(await store.openStreams()).toEqual([first.id, third.id]);
      expect(await store.problems()).toEqual([]);
    });

    test('two at a time do not mix', async () => {
      const store = await open();
      const [one, two] = [await store.openBytes('left'), await store.openBytes('right')];
      expect(one.id).not.toBe(two.id);
      await Promise.all([one.append(Uint8Array.of(1)), two.append(Uint8Array.of(2)), one.append(Uint8Array.of(3))]);
      expect((await store.bytes(one.id))?.pieces).toEqual([Uint8Array.of(1), Uint8Array.of(3)]);
      expect((await store.bytes(two.id))?.pieces).toEqual([Uint8Array.of(2)]);
    });

    test('that were closed take nothing more', async () => {
      const store = await open();
      const writer = await store.openBytes('set');
      await writer.append(Uint8Array.of(1));
      await writer.close();
      const refused = { name: 'StorageError', code: 'already-closed' };
      await expect(writer.append(Uint8Array.of(2))).rejects.toMatchObject(refused);
      await expect(writer.close()).rejects.toMatchObject(refused);
      expect((await store.bytes(writer.id))?.pieces).toEqual([Uint8Array.of(1)]);
    });

    test('without a piece are closed too; of an id that nobody has are undefined', async () => {
      const store = await open();
      const writer = await store.openBytes('set');
      expect(await writer.close()).toBe(hashByNode([]));
      expect((await store.bytes(writer.id))?.pieces).toEqual([]);
      expect(await store.bytes('0123')).toBeUndefined();
    });
  });
}
