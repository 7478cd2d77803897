import { readFileSync } from 'node:fs';
import type { Report } from '@surae/analysis';
import { foldVisit, personOf, pullEventKinds, type Visit, visitEventKinds } from '@surae/casebook';
import { recordingFromStream } from '@surae/records';
import { IndexedDbStore, type StoredDocument } from '@surae/storage';
import { beforeAll, describe, expect, test } from 'vitest';
import { freshName } from '../support/browser-database.ts';
import { fixturePath } from '../support/fixture.ts';
import { hashByNode } from '../support/store-laws.ts';

interface FrozenStore {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly object[]>>;
}

/** A store as a version wrote it: what is not a list or an object with `base64` stays as it is. */
function frozen(name: string): FrozenStore {
  const text = readFileSync(fixturePath(`stores/${name}.json`), 'utf8');
  return JSON.parse(text, (_key, value: unknown) => {
    const { base64 } = (value ?? {}) as { base64?: string };
    return base64 === undefined ? value : Uint8Array.from(Buffer.from(base64, 'base64'));
  }) as FrozenStore;
}

/** The object stores as version 1 made them: written out here, so that they stay what they were. */
function makeVersion1(database: IDBDatabase): void {
  const documents = database.createObjectStore('documents', { keyPath: 'sequence', autoIncrement: true });
  documents.createIndex('id', 'id', { unique: true });
  documents.createIndex('kind', 'kind');
  documents.createIndex('kind-about', ['kind', 'about']);
  const streams = database.createObjectStore('streams', { keyPath: 'sequence', autoIncrement: true });
  streams.createIndex('id', 'id', { unique: true });
  database.createObjectStore('pieces', { keyPath: ['stream', 'index'] });
}

/** Puts a frozen store into the browser under a new name. */
function thaw({ version, stores }: FrozenStore, make: (database: IDBDatabase) => void): Promise<string> {
  const name = freshName();
  const opening = indexedDB.open(name, version);
  opening.addEventListener('upgradeneeded', () => {
    make(opening.result);
    for (const [objectStore, rows] of Object.entries(stores)) {
      for (const row of rows) opening.transaction!.objectStore(objectStore).add(row);
    }
  });
  return new Promise((resolve, reject) => {
    opening.addEventListener('error', () => reject(opening.error!));
    opening.addEventListener('success', () => {
      opening.result.close();
      resolve(name);
    });
  });
}

describe('a store that version 1 wrote', () => {
  let store: IndexedDbStore;
  let documents: StoredDocument[];
  let visit: Visit;

  beforeAll(async () => {
    const content = frozen('version-1');
    documents = [...(content.stores['documents'] as StoredDocument[])];
    store = await IndexedDbStore.open(await thaw(content, makeVersion1));
    const [begun] = await store.documents({ kind: 'visit' });
    const events = await Promise.all(visitEventKinds.map((kind) => store.documents({ kind, about: begun.id })));
    visit = foldVisit(
      begun,
      events.flat().sort((a, b) => a.sequence - b.sequence),
    );
  });

  test('opens without a problem', async () => {
    expect(await store.problems()).toEqual([]);
  });

  test('gives every document as it was', async () => {
    expect(documents).toHaveLength(21);
    for (const document of documents) expect(await store.document(document.id)).toEqual(document);
    const kinds = [...new Set(documents.map(({ kind }) => kind))];
    // every kind of event that there was is among them; what is asked since then is not
    const later: readonly string[] = [
      'visit-history',
      'visit-test',
      'visit-ladder',
      'visit-choice',
      'verdict-by-hand',
      'sensor-answer',
      'result-seen',
      'visit-plan',
      'proposal-declined',
      'fact-told',
      'legs-swapped',
      'same-leg',
      'new-start',
      'practice-begun',
      'practice-stopped',
      ...pullEventKinds,
    ];
    const then = visitEventKinds.filter((kind) => !later.includes(kind));
    expect(kinds.sort()).toEqual(['person', 'visit', ...then].sort());
    const [person] = (await store.documents({ kind: 'person' })).map(personOf);
    expect(person).toMatchObject({ name: 'Edda Moreau-Lin', bodyMassKg: 66, heelLeverM: 0.18, demo: true });
  });

  test('gives every stream, and the open one as far as it came', async () => {
    const ids = visit.sets.map(({ bytesId }) => bytesId);
    expect(ids).toHaveLength(3);
    const open = visit.sets.find(({ setAside }) => setAside)!.bytesId;
    expect(await store.openStreams()).toEqual([open]);
    for (const id of ids) {
      const { pieces, sha256 } = (await store.bytes(id))!;
      expect(sha256).toBe(id === open ? null : hashByNode(pieces));
      const [{ timesS, channels }] = recordingFromStream(pieces).groups;
      expect(timesS.length).toBeGreaterThan(300);
      expect(channels.map(({ quantity }) => quantity)).toEqual(['heel-height']);
      expect(Math.max(...channels[0].samples)).toBeGreaterThan(0.05);
    }
  });

  test('tells the whole visit', () => {
    expect(visit).toMatchObject({
      sore: { left: 'no', right: 'mid-portion' },
      safety: { seenWhole: true, ticked: [], overridden: [] },
      first: 'left',
      restS: 300,
      closed: true,
    });
    expect(visit.sets.map(({ choice, setAsideWhy, end }) => [choice.side, setAsideWhy, end?.reason])).toEqual([
      ['left', null, 'fatigue'],
      ['right', 'cut-off', undefined],
      ['right', null, 'pain'],
    ]);
    for (const { report, liveCount, marks, notes, setAside } of visit.sets) {
      if (setAside) continue;
      const { count, repetitions } = report as Report;
      expect([count.attempted, repetitions.length, liveCount]).toEqual([4, 4, 4]);
      expect(marks).toEqual([{ atS: 3.5, criterion: 'knee' }]);
      expect(notes).toEqual([{ atS: 4, what: 'pain', value: 2 }]);
    }
  });
});
