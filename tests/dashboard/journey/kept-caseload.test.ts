import { caseloadOf, caseloadVersion, countingDocuments, noHistory } from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { type DocumentQuery, type RecordStore, type StoredDocument, Vault } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptCaseload } from '../../../apps/dashboard/src/journey/kept-caseload.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { MemoryRows } from '../../../packages/storage/src/memory-rows.ts';
import type { KeyRow } from '../../../packages/storage/src/rows.ts';
import { cheapCost, passphrase } from '../../support/cheap-vault.ts';
import { runs } from '../../support/runs.ts';
import { asked } from '../../support/whose-laws.ts';

const read = (documents: readonly StoredDocument[]) => Promise.resolve(countingDocuments(documents));
const clear = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
const told = noHistory.legs.left;
const flareTold = {
  ...noHistory,
  legs: { ...noHistory.legs, left: { ...told, irritability: { ...told.irritability, flare: 'yes' as const } } },
};
const rest = { schema: 1, author: 'test', at: '2026-03-01T10:00:00Z' };

/** An encrypted clinic in memory; what is read of it and what is kept of it is told. */
class Clinic {
  readonly rows = new MemoryRows();
  private readonly vault = new Vault(this.rows, { cost: cheapCost });
  private second = 0;
  private keeping: Promise<unknown> = Promise.resolve();
  queries: DocumentQuery[] = [];
  store!: RecordStore;
  book!: VisitBook;

  async begin(): Promise<this> {
    this.take((await this.vault.create(passphrase)).store);
    return this;
  }

  private take(store: RecordStore): void {
    const [documents, keep] = [store.documents.bind(store), store.keepOutlines.bind(store)];
    store.documents = (query) => (this.queries.push(query), documents(query));
    store.keepOutlines = (...given) => {
      const kept = keep(...given);
      this.keeping = kept;
      return kept;
    };
    const clock = { isoNow: () => new Date(Date.UTC(2026, 2, 1, 9, 0, this.second++)).toISOString() };
    this.store = store;
    this.book = new VisitBook(store, clock, 'test', read);
  }

  async reopen(): Promise<void> {
    this.vault.lock();
    this.take(await this.vault.open(passphrase));
  }

  /** The list as the page asks for it, and how often documents were asked for it. */
  async list(): Promise<{ readonly list: Awaited<ReturnType<VisitBook['caseload']>>; readonly asked: number }> {
    this.queries = [];
    const list = await this.book.caseload();
    const { length } = this.queries;
    await this.keeping;
    return { list, asked: length };
  }

  /** The list made of all documents and of nothing else. */
  async plain(): Promise<ReturnType<typeof caseloadOf>> {
    return caseloadOf(countingDocuments(await this.store.documents({})).filter(({ kind }) => kind !== 'visit-pain'));
  }

  async alterKeys(change: (row: KeyRow) => KeyRow): Promise<void> {
    const inside = this.rows as unknown as { keyRows: Map<string, KeyRow> };
    for (const row of await this.rows.keys()) inside.keyRows.set(row.whose, change(row));
  }

  async people(): Promise<readonly string[]> {
    return (await this.store.documents({ kind: 'person' })).map(({ id }) => id);
  }
}

const somebody = { bodyMassKg: 70, heelLeverM: null, demo: false };
const turned = (bytes: Uint8Array): Uint8Array => bytes.map((byte, i) => (i === bytes.length - 1 ? byte ^ 1 : byte));

/** Whatever may happen to a clinic and to what is kept of its list. */
const happenings: Readonly<Record<string, (clinic: Clinic, which: number) => Promise<unknown>>> = {
  person: (clinic, which) => clinic.book.addPerson({ name: `A ${which}`, ...somebody }),
  visit: (clinic, which) => onPerson(clinic, which, (id) => clinic.book.beginVisit(id)),
  answer: (clinic, which) =>
    onVisit(clinic, which, (id) => clinic.book.record(id, { kind: 'visit-safety', safety: clear })),
  close: (clinic, which) => onVisit(clinic, which, (id) => clinic.book.record(id, { kind: 'visit-closed' })),
  correct: (clinic, which) =>
    onPerson(clinic, which, (id) => clinic.book.amendPerson(id, { bodyMassKg: 60 + which }, 'R. N.')),
  amend: (clinic, which) =>
    onPerson(clinic, which, (id) => {
      const body = { change: { name: `B ${which}` }, why: null };
      return clinic.store.add({ ...rest, kind: 'amendment', about: id, body });
    }),
  episode: (clinic, which) =>
    onPerson(clinic, which, (id) => {
      const told = { onset: null, began: null, story: null, goal: null, loads: null };
      const body = { sore: { left: 'no', right: 'insertion' }, over: which % 3 === 0 ? '2026-03' : null, ...told };
      return clinic.store.add({ ...rest, kind: 'episode', about: id, body });
    }),
  morning: (clinic, which) =>
    onPerson(clinic, which, (id) => {
      const on = `2026-03-${10 + which}`;
      const body = { on, pain: { left: which % 11, right: null }, stiffnessMin: null };
      return clinic.store.add({ ...rest, kind: 'morning-check', about: id, body });
    }),
  flare: (clinic, which) =>
    onVisit(clinic, which, (id) => clinic.book.record(id, { kind: 'visit-history', history: flareTold })),
  test: (clinic, which) =>
    onVisit(clinic, which, async (id) => {
      const choice = {
        side: 'left',
        protocolId: 'a',
        protocolFingerprint: 'b',
        placement: 'heel',
        origin: 'simulated',
      };
      const begun = { ...rest, kind: 'set-begun', about: id, body: { choice, bytesId: 'c' } };
      const { id: setId } = await clinic.store.add(begun);
      if (which % 2 === 0)
        await clinic.store.add({ ...rest, kind: 'set-aside', about: id, body: { setId, why: 'wrong' } });
    }),
  remove: (clinic, which) =>
    onVisit(clinic, which, (id) => clinic.store.add({ ...rest, kind: 'removal', about: id, body: { why: 'wrong' } })),
  newer: (clinic, which) =>
    onPerson(clinic, which, (id) => clinic.store.add({ ...rest, schema: 9, kind: 'visit', about: id, body: {} })),
  unreadable: (clinic) => clinic.store.add({ ...rest, kind: 'person', about: null, body: 7 }),
  'of nobody': (clinic) => clinic.store.add({ ...rest, kind: 'visit-closed', about: null, body: {} }),
  erase: (clinic, which) => onPerson(clinic, which, (id) => clinic.store.erase(id, asked)),
  reopen: (clinic) => clinic.reopen(),
  // what is kept of the list is taken away, altered, or of another version
  lost: (clinic, which) =>
    clinic.alterKeys((row) => {
      const { outline, ...key } = row;
      return outline !== undefined && row.whose.charCodeAt(0) % 3 === which % 3 ? key : row;
    }),
  altered: (clinic) =>
    clinic.alterKeys((row) => (row.outline === undefined ? row : { ...row, outline: turned(row.outline) })),
  outdated: async (clinic) => {
    const { mark } = await clinic.store.outlines({ made: 'caseload 0', kinds: [] });
    return clinic.store.keepOutlines('caseload 0', new Map([['x', null]]), mark);
  },
};

async function onPerson(clinic: Clinic, which: number, work: (id: string) => Promise<unknown>): Promise<void> {
  const ids = await clinic.people();
  if (ids.length > 0) await work(ids[which % ids.length]);
}

async function onVisit(clinic: Clinic, which: number, work: (id: string) => Promise<unknown>): Promise<void> {
  const visits = countingDocuments(await clinic.store.documents({})).filter(({ kind }) => kind === 'visit');
  if (visits.length > 0) await work(visits[which % visits.length].id);
}

describe('the list of people of an encrypted clinic', () => {
  test('is what its documents make it, whatever became of what is kept of it', async () => {
    const what = fc.constantFrom(...Object.keys(happenings), 'person', 'visit', 'visit', 'answer');
    const happened = fc.array(fc.record({ what, which: fc.nat(20) }), { minLength: 20, maxLength: 20 });
    await fc.assert(
      fc.asyncProperty(happened, async (steps) => {
        const clinic = await new Clinic().begin();
        for (const step of steps) {
          await happenings[step.what](clinic, step.which);
          const { list } = await clinic.list();
          expect(list).toEqual(await clinic.plain());
          expect((await clinic.list()).list).toEqual(list);
        }
      }),
      runs(15, 200),
    );
  });

  test('is read from documents once, then of those alone of whom something came', async () => {
    const clinic = await new Clinic().begin();
    for (let i = 0; i < 4; i += 1)
      await clinic.book.beginVisit((await clinic.book.addPerson({ name: `A ${i}`, ...somebody })).id);
    expect((await clinic.list()).asked).toBeGreaterThan(0);
    expect((await clinic.list()).asked).toBe(0);
    await clinic.reopen();
    const { list, asked: none } = await clinic.list();
    expect([none, list.length]).toEqual([0, 4]);
    const { person, visits } = list[2];
    await clinic.book.record(visits[0].id, { kind: 'visit-safety', safety: clear });
    const after = await clinic.list();
    expect(clinic.queries.filter(({ whose }) => whose !== undefined).map(({ whose }) => whose)).toEqual([person.id]);
    expect(
      clinic.queries.some(
        ({ kind, whose, about }) => kind?.includes('visit') && whose === undefined && about === undefined,
      ),
    ).toBe(false);
    expect(after.list.map((one) => one.visits[0].answered)).toEqual([false, false, true, false]);
    expect((await clinic.list()).asked).toBe(0);
  });

  test('stands where it cannot be kept', async () => {
    const clinic = await new Clinic().begin();
    await clinic.book.addPerson({ name: 'A 17', ...somebody });
    clinic.store.keepOutlines = () => Promise.reject(new Error('no room'));
    expect((await keptCaseload(clinic.store, (query) => clinic.store.documents(query))).length).toBe(1);
    expect((await keptCaseload(clinic.store, (query) => clinic.store.documents(query))).length).toBe(1);
  });
});

test('an entry of the list is what its version says: whoever changes one raises the version, so that none is taken for the other', async () => {
  const clinic = await new Clinic().begin();
  const { id } = await clinic.book.addPerson({ name: 'A 17', ...somebody, birthYear: 1970 });
  const visit = await clinic.book.beginVisit(id);
  await clinic.book.record(visit, { kind: 'visit-safety', safety: clear });
  await clinic.book.amendPerson(id, { bodyMassKg: 71 }, 'R. N.');
  const { list } = await clinic.list();
  expect([caseloadVersion, JSON.parse(JSON.stringify(list))]).toEqual([
    '2.1.1',
    [
      {
        person: { id, name: 'A 17', bodyMassKg: 71, heelLeverM: null, demo: false, birthYear: 1970 },
        amended: [{ at: '2026-03-01T09:00:03.000Z', by: 'R. N.', field: 'bodyMassKg', before: 70, after: 71 }],
        visits: [{ id: visit, begunAt: '2026-03-01T09:00:01.000Z', closed: false, answered: true, tested: false }],
        facts: {
          massAt: '2026-03-01T09:00:03.000Z',
          massBefore: 70,
          episodes: [],
          morning: null,
          flareTold: null,
        },
      },
    ],
  ]);
});
