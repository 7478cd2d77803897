import {
  casebookOf,
  countingDocuments,
  noHistory,
  type SetChoice,
  type SetEnd,
  type VisitEvent,
} from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { describe, expect, test } from 'vitest';
import { currentStep, stepsOf } from '../../../apps/dashboard/src/journey/steps.ts';
import { SafetyLockError, VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';

/** A clock of which each look is a second later. */
function steppingClock(): { isoNow(): string } {
  let seconds = 0;
  return { isoNow: () => new Date(Date.UTC(2026, 2, 1, 9, 0, seconds++)).toISOString() };
}

const choice = (side: SetChoice['side'], origin: SetChoice['origin'] = 'simulated'): SetChoice => ({
  side,
  protocolId: 'single-leg.floor',
  protocolFingerprint: 'f',
  placement: 'foot',
  origin,
});
const clear = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };
const end: SetEnd = { reason: 'fatigue', painPeak: 2, exertion: 9 };

async function visitIn(store: MemoryStore): Promise<{ book: VisitBook; id: string }> {
  const book = new VisitBook(store, steppingClock(), 'test');
  const person = await book.addPerson({ name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false });
  return { book, id: await book.beginVisit(person.id) };
}

describe('the list of people', () => {
  test('tells of each visit what the visit itself tells, and asks for no result', async () => {
    const store = new MemoryStore();
    const { book, id } = await visitIn(store);
    const [{ person }] = await book.caseload();
    const empty = await book.beginVisit(person.id);
    await book.record(id, { kind: 'visit-safety', safety: clear });
    const over = await book.beginVisit(person.id);
    await book.record(over, { kind: 'visit-closed' });
    const asked: unknown[] = [];
    const documents = store.documents.bind(store);
    store.documents = (query) => (asked.push(query.kind), documents(query));
    const [{ visits }] = await book.caseload();
    expect(visits.map((line) => [line.id, line.closed, line.answered])).toEqual([
      [over, true, true],
      [empty, false, false],
      [id, false, true],
    ]);
    expect(asked.flat()).not.toContain('set-result');
    expect(await book.visitLines(person.id)).toEqual(visits);
    expect(visits.map((line) => line.begunAt)).toEqual((await book.visitsOf(person.id)).map(({ begunAt }) => begunAt));
    expect(await book.visitLines('nobody')).toEqual([]);
  });

  test('bytes of a visit are kept with its person, so that they go when the person is erased', async () => {
    const store = new MemoryStore();
    const { book, id } = await visitIn(store);
    const writer = await book.openBytes(id, 'set left');
    await writer.append(new Uint8Array([1, 2, 3]));
    await writer.close();
    const [person] = await book.people();
    const { streams } = await store.erase(person.id, { author: 'test', at: '2026-03-01T10:00:00.000Z' });
    expect([streams, await store.bytes(writer.id), await book.people()]).toEqual([1, undefined, []]);
  });
});

describe('people', () => {
  test('who was added is found, alone and among all', async () => {
    const book = new VisitBook(new MemoryStore(), steppingClock(), 'test');
    const a = await book.addPerson({ name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false });
    const b = await book.addPerson({ name: 'B 4', bodyMassKg: null, heelLeverM: 0.18, demo: false });
    expect(await book.people()).toEqual([a, b]);
    expect(await book.person(b.id)).toEqual({ id: b.id, name: 'B 4', bodyMassKg: null, heelLeverM: 0.18, demo: false });
  });

  test('a correction is a document of its own; a closed visit keeps the body that was known at its end', async () => {
    const store = new MemoryStore();
    const book = new VisitBook(store, steppingClock(), 'test');
    const a = await book.addPerson({ name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false });
    const closed = await book.beginVisit(a.id);
    await book.record(closed, { kind: 'visit-closed' });
    const open = await book.beginVisit(a.id);
    await book.amendPerson(a.id, { name: 'A 71', bodyMassKg: 74 }, 'R. N.');
    const now = { ...a, name: 'A 71', bodyMassKg: 74 };
    expect([await book.person(a.id), await book.people()]).toEqual([now, [now]]);
    expect(await book.personOfVisit((await book.visit(open))!)).toEqual(now);
    expect(await book.personOfVisit((await book.visit(closed))!)).toEqual({ ...now, bodyMassKg: 71.5 });
    expect((await book.visitAndPast(open))?.person).toEqual(now);
    expect((await book.visitAndPast(closed))?.person).toEqual({ ...now, bodyMassKg: 71.5 });
    expect((await store.documents({ kind: 'person' })).map(({ body }) => body)).toMatchObject([{ bodyMassKg: 71.5 }]);
    expect((await book.amendedFields(a.id)).map(({ field, by }) => [field, by])).toEqual([
      ['name', 'R. N.'],
      ['bodyMassKg', 'R. N.'],
    ]);
    expect(await book.amendedFields('nobody')).toEqual([]);
  });

  test('an id that is nobody, or no person, finds nobody', async () => {
    const { book, id } = await visitIn(new MemoryStore());
    expect(await book.person('nobody')).toBeUndefined();
    expect(await book.person(id)).toBeUndefined();
  });
});

describe('visits', () => {
  test('the newest stands first, and other people have their own', async () => {
    const { book, id } = await visitIn(new MemoryStore());
    const { personId } = (await book.visit(id))!;
    const later = await book.beginVisit(personId);
    const other = await book.addPerson({ name: 'B 4', bodyMassKg: null, heelLeverM: null, demo: false });
    await book.beginVisit(other.id);
    expect((await book.visitsOf(personId)).map((visit) => visit.id)).toEqual([later, id]);
  });

  test('an id that is no visit finds none', async () => {
    const { book, id } = await visitIn(new MemoryStore());
    const { personId } = (await book.visit(id))!;
    expect(await book.visit(personId)).toBeUndefined();
    expect(await book.visitAndPast(personId)).toBeUndefined();
    expect(await book.visit('nothing')).toBeUndefined();
    expect(await book.visitAndPast('nothing')).toBeUndefined();
  });

  test('every event is told to who listens, after it is kept', async () => {
    const { book, id } = await visitIn(new MemoryStore());
    let told = 0;
    book.addEventListener('visit-changed', () => (told += 1));
    await book.record(id, { kind: 'visit-sore', sore: { left: 'no', right: 'no' } });
    expect(told).toBe(1);
  });
});

const floorChosen = { test: 'heel-raise', protocolId: 'single-leg.floor', from: 'proposed' } as const;

/** The events of a whole visit, each with the step that follows it; ids of sets are filled in while it goes. */
const journey: readonly (readonly [(sets: readonly string[]) => VisitEvent, string])[] = [
  [() => ({ kind: 'visit-sore', sore: { left: 'insertion', right: 'no' } }), 'history'],
  [() => ({ kind: 'visit-history', history: noHistory }), 'safety'],
  [() => ({ kind: 'visit-safety', safety: clear }), 'choice'],
  [() => ({ kind: 'visit-choice', choice: floorChosen }), 'test-first'],
  [() => ({ kind: 'visit-first', first: 'left' }), 'test-first'],
  [() => ({ kind: 'set-begun', choice: choice('left'), bytesId: 'b1' }), 'test-first'],
  [([first]) => ({ kind: 'set-mark', setId: first, mark: { atS: 3, criterion: 'knee' } }), 'test-first'],
  [([first]) => ({ kind: 'set-stopped', setId: first, liveCount: 12 }), 'ending-first'],
  [([first]) => ({ kind: 'set-aside', setId: first, why: 'set-up' }), 'test-first'],
  [() => ({ kind: 'set-begun', choice: choice('left'), bytesId: 'b2' }), 'test-first'],
  [([, again]) => ({ kind: 'set-stopped', setId: again, liveCount: 14 }), 'ending-first'],
  [([, again]) => ({ kind: 'set-end', setId: again, end }), 'rest'],
  [() => ({ kind: 'rest-over', restS: 125 }), 'test-second'],
  [() => ({ kind: 'set-begun', choice: choice('right'), bytesId: 'b3' }), 'test-second'],
  [([, , third]) => ({ kind: 'set-stopped', setId: third, liveCount: 15 }), 'ending-second'],
  [([, , third]) => ({ kind: 'set-end', setId: third, end }), 'result'],
  [() => ({ kind: 'result-seen' }), 'plan'],
  [() => ({ kind: 'visit-plan', planItemIds: [] }), 'hand-over'],
  [() => ({ kind: 'visit-closed', how: 'nothing', lines: [] }), 'result'],
];

test('a program that is started anew after any event is at the same step with the same visit', async () => {
  const store = new MemoryStore();
  const { book, id } = await visitIn(store);
  const sets: string[] = [];
  expect(currentStep((await book.visit(id))!).id).toBe('soreness');
  for (const [eventOf, step] of journey) {
    const event = eventOf(sets);
    const documentId = await book.record(id, event);
    if (event.kind === 'set-begun') sets.push(documentId);
    const before = (await book.visit(id))!;
    const after = (await new VisitBook(store, steppingClock(), 'again').visit(id))!;
    expect(after).toEqual(before);
    expect((await book.visitAndPast(id))?.visit).toEqual(before);
    expect(currentStep(after).id, event.kind).toBe(step);
  }
  const done = (await book.visit(id))!;
  expect(stepsOf(done).every((one) => one.isDone(done))).toBe(true);
  expect(done.sets.map(({ choice: { side }, setAside }) => [side, setAside])).toEqual([
    ['left', true],
    ['left', false],
    ['right', false],
  ]);
});

test('nothing that was stored is taken back or changed by what follows', async () => {
  const store = new MemoryStore();
  const { book, id } = await visitIn(store);
  const sets: string[] = [];
  const kept = new Map<string, unknown>();
  for (const [eventOf] of journey) {
    const event = eventOf(sets);
    const documentId = await book.record(id, event);
    if (event.kind === 'set-begun') sets.push(documentId);
    kept.set(documentId, await store.document(documentId));
  }
  for (const [documentId, document] of kept) expect(await store.document(documentId)).toEqual(document);
});

describe('the last gate before a set', () => {
  test('a live set is refused until the list is answered, whole and clear, and then nothing is stored', async () => {
    const store = new MemoryStore();
    const { book, id } = await visitIn(store);
    const live: VisitEvent = { kind: 'set-begun', choice: choice('left', 'live'), bytesId: 'b' };
    await expect(book.record(id, live)).rejects.toThrow(SafetyLockError);
    await book.record(id, { kind: 'visit-safety', safety: { ...clear, seenWhole: false } });
    await expect(book.record(id, live)).rejects.toMatchObject({ why: ['not-seen-whole'] });
    await book.record(id, { kind: 'visit-safety', safety: { ...clear, ticked: ['safety.rupture'] } });
    await expect(book.record(id, live)).rejects.toMatchObject({ why: ['locked'] });
    expect((await book.visit(id))!.sets).toEqual([]);
    await book.record(id, { kind: 'visit-safety', safety: clear });
    await book.record(id, live);
    expect((await book.visit(id))!.sets).toHaveLength(1);
  });

  test('an answer of an earlier day opens nothing today, in this visit or in another of the same person', async () => {
    const store = new MemoryStore();
    const { book, id } = await visitIn(store);
    await book.record(id, { kind: 'visit-safety', safety: clear });
    const nextDay = new VisitBook(store, { isoNow: () => '2026-03-02T08:00:00.000Z' }, 'test');
    const live: VisitEvent = { kind: 'set-begun', choice: choice('left', 'live'), bytesId: 'b' };
    await expect(nextDay.record(id, live)).rejects.toMatchObject({ why: ['another-day'] });
    // and what is answered in one visit is not answered in the next
    const { personId } = (await nextDay.visit(id))!;
    const next = await nextDay.beginVisit(personId);
    await expect(nextDay.record(next, live)).rejects.toMatchObject({ why: ['not-asked'] });
    expect((await nextDay.visit(next))!.sore).toEqual({ left: null, right: null });
    await nextDay.record(id, { kind: 'visit-safety', safety: clear });
    await nextDay.record(id, live);
    expect((await nextDay.visit(id))!.sets).toHaveLength(1);
  });

  test('a simulated and a replayed set run under any lock', async () => {
    const { book, id } = await visitIn(new MemoryStore());
    await book.record(id, { kind: 'visit-safety', safety: { ...clear, ticked: ['safety.rupture'] } });
    await book.record(id, { kind: 'set-begun', choice: choice('left', 'simulated'), bytesId: 'b1' });
    await book.record(id, { kind: 'set-begun', choice: choice('right', 'replayed'), bytesId: 'b2' });
    expect((await book.visit(id))!.sets).toHaveLength(2);
  });

  test('a live set of a visit that does not exist is refused', async () => {
    const book = new VisitBook(new MemoryStore(), steppingClock(), 'test');
    const live: VisitEvent = { kind: 'set-begun', choice: choice('left', 'live'), bytesId: 'b' };
    await expect(book.record('nowhere', live)).rejects.toMatchObject({ why: ['not-asked'] });
  });
});

test('visits before one are those of the same person that were begun earlier, the oldest first', async () => {
  const store = new MemoryStore();
  const times = ['2026-03-02', '2026-01-05', '2026-04-01', '2026-02-02'];
  let now = times[0];
  const book = new VisitBook(store, { isoNow: () => `${now}T09:00:00.000+01:00` }, 'test');
  const { id: personId } = await book.addPerson({ name: 'A', bodyMassKg: null, heelLeverM: null, demo: false });
  const other = await book.addPerson({ name: 'B', bodyMassKg: null, heelLeverM: null, demo: false });
  const ids: string[] = [];
  for (const time of times) {
    now = time;
    ids.push(await book.beginVisit(personId));
    await book.beginVisit(other.id);
  }
  const { earlier } = (await book.visitAndPast(ids[0]))!;
  expect(earlier.map(({ begunAt }) => begunAt.slice(0, 10))).toEqual(['2026-01-05', '2026-02-02']);
});

describe('what cannot be read or was corrected', () => {
  const read = (documents: Parameters<typeof countingDocuments>[0]) => Promise.resolve(countingDocuments(documents));
  const rest = { schema: 1, author: 'test', at: '2026-03-01T10:00:00Z' };

  test('hides neither the list nor the rest of the visit', async () => {
    const store = new MemoryStore();
    const book = new VisitBook(store, steppingClock(), 'test', read);
    const { id: personId } = await book.addPerson({ name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false });
    const visitId = await book.beginVisit(personId);
    await book.record(visitId, { kind: 'visit-safety', safety: clear });
    // what another program might have written, or a damaged backup held
    await store.add({ ...rest, kind: 'visit-sore', about: visitId, body: {} });
    await store.add({ ...rest, kind: 'set-begun', about: visitId, body: null });
    await store.add({ ...rest, kind: 'person', about: null, body: 7 });
    await store.add({ ...rest, kind: 'visit', about: personId, body: 'no' });
    expect((await book.people()).map(({ name }) => name)).toEqual(['A 17', '?']);
    const visits = await book.visitsOf(personId);
    expect(visits.map(({ sore, sets, safety }) => [sore, sets, safety?.seenWhole])).toEqual([
      [{ left: null, right: null }, [], undefined],
      [{ left: null, right: null }, [], true],
    ]);
    expect(await book.visit(visitId)).toEqual(visits[1]);
    expect((await book.visitAndPast(visitId))?.visit).toEqual(visits[1]);
  });

  test('an amendment and a removal count here as they do in the casebook', async () => {
    const store = new MemoryStore();
    const book = new VisitBook(store, steppingClock(), 'test', read);
    const { id: personId } = await book.addPerson({ name: 'A 17', bodyMassKg: 71.5, heelLeverM: null, demo: false });
    const visitId = await book.beginVisit(personId);
    await book.record(visitId, { kind: 'visit-sore', sore: { left: 'insertion', right: 'no' } });
    const [sore] = await store.documents({ kind: 'visit-sore' });
    const taken = await book.beginVisit(personId);
    const change = { sore: { left: 'no', right: 'insertion' } };
    await store.add({ ...rest, kind: 'amendment', about: sore.id, body: { change, why: null } });
    await store.add({ ...rest, kind: 'amendment', about: personId, body: { change: { name: 'A 71' }, why: null } });
    await store.add({ ...rest, kind: 'removal', about: taken, body: { why: 'begun by mistake' } });
    const { people } = casebookOf((await store.changesSince(null)).documents.map(({ document }) => document));
    expect((await book.visit(visitId))?.sore).toEqual(change.sore);
    expect((await book.visitAndPast(visitId))?.visit.sore).toEqual(change.sore);
    expect((await book.visitAndPast(visitId))?.person).toEqual(people[0].person);
    expect(await book.visit(taken)).toBeUndefined();
    expect(await book.visitAndPast(taken)).toBeUndefined();
    expect(await book.visitsOf(personId)).toEqual(people[0].visits.map(({ visit }) => visit));
    expect(await book.person(personId)).toEqual(people[0].person);
    expect((await book.people())[0].name).toBe('A 71');
  });
});
