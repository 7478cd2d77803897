import { countingDocuments } from '@surae/casebook';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { PlanRefusedError } from '../../../apps/dashboard/src/journey/person-notes.ts';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { madeVisit } from '../../support/made-visit.ts';
import { madeExercise, madePlanItem, madeRunLimit } from '../../support/plan-items.ts';

async function opened() {
  const store = new MemoryStore();
  const clock = { isoNow: () => '2026-03-01T09:00:00.000+01:00' };
  const book = new VisitBook(store, clock, 'K', (documents) => Promise.resolve(countingDocuments(documents)));
  const { id } = await book.addPerson({ name: 'Ada Vermeulen', bodyMassKg: null, heelLeverM: null, demo: true });
  return { store, book, id };
}

test('what is taken back is told by a document about each, and stays readable', async () => {
  const { store, book, id } = await opened();
  const visits = [await book.beginVisit(id), await book.beginVisit(id)];
  await book.notes.remove(visits, 'undone');
  expect(await book.visitsOf(id)).toEqual([]);
  const removals = await store.documents({ kind: 'removal' });
  expect(removals.map(({ about, body }) => [about, body])).toEqual(visits.map((one) => [one, { why: 'undone' }]));
  expect(await store.documents({ kind: 'visit' })).toHaveLength(2);
});

const clear = {
  at: '2026-03-01T08:50:00+01:00',
  listVersion: SAFETY_LIST_VERSION,
  seenWhole: true,
  ticked: [],
  overridden: [],
};

test('a plan is kept line by line in its order, and one planned anew takes its place', async () => {
  const { book, id } = await opened();
  const visit = { ...madeVisit(), personId: id, safety: clear };
  const line = (what: string) => madePlanItem({ what });
  const first = await book.notes.keepPlan(visit, [line('holds'), madeExercise('one-leg-raise')]);
  const read = await book.notes.plan(id, first);
  expect(read.map(({ body }) => body.what)).toEqual(['holds', 'one-leg-raise']);
  const second = await book.notes.keepPlan({ ...visit, plan: first }, [line('rest')]);
  expect(await book.notes.plan(id, first)).toEqual([]);
  expect((await book.notes.plan(id, second)).map(({ body }) => body.what)).toEqual(['rest']);
  expect(await book.notes.plan(id, [])).toEqual([]);
});

test('a plan that was begun is there until it is kept, lies with its visit and goes with the person', async () => {
  const { store, book, id } = await opened();
  const visitId = await book.beginVisit(id);
  const items = [madeExercise('one-leg-raise', { repetitions: 13, decision: 'changed', proposedBy: 'guidance.x' })];
  expect(await book.notes.begunPlan(visitId)).toBeNull();
  await book.notes.keepBegunPlan(visitId, { items: [], typed: 'walk' });
  await book.notes.keepBegunPlan(visitId, { items, typed: 'walk' });
  expect(await book.notes.begunPlan(visitId)).toEqual({ items, typed: 'walk', at: '2026-03-01T09:00:00.000+01:00' });
  // nothing of it is a plan, nor any part of a visit
  expect(await store.documents({ kind: 'plan-item' })).toEqual([]);
  expect((await book.visit(visitId))?.plan).toBeUndefined();
  expect(await store.documents({ kind: 'plan-begun', whose: id })).toHaveLength(2);
  await book.record(visitId, { kind: 'visit-plan', planItemIds: [] });
  expect(await book.notes.begunPlan(visitId)).toBeNull();
});

test('a plan is one write, with the one whose place it takes: what is cut off between two lines would be another plan', async () => {
  const { store, book, id } = await opened();
  const visit = { ...madeVisit(), personId: id, safety: clear };
  const first = await book.notes.keepPlan(visit, [madePlanItem({ what: 'holds' })]);
  const addAll = store.addAll.bind(store);
  let writes = 0;
  // the machine goes off after one write
  store.addAll = (documents) => {
    writes += 1;
    return writes > 1 ? Promise.reject(new Error('off')) : addAll(documents);
  };
  const lines = ['rest', 'walk'].map((what) => madePlanItem({ what }));
  const second = await book.notes.keepPlan({ ...visit, plan: first }, lines);
  expect((await book.notes.plan(id, second)).map(({ body }) => body.what)).toEqual(['rest', 'walk']);
  expect(await book.notes.plan(id, first)).toEqual([]);
});

test('nothing that loads is kept under a lock, whatever page asks, and nothing is half kept', async () => {
  const { store, book, id } = await opened();
  const locked = { ...madeVisit(), personId: id, safety: { ...clear, ticked: ['safety.fluoroquinolone'] } };
  const items = [madePlanItem(), madeRunLimit()];
  await expect(book.notes.keepPlan(locked, items)).rejects.toMatchObject({ rules: ['safety-lock'] });
  await expect(book.notes.keepPlan({ ...locked, safety: null }, items)).rejects.toThrow(PlanRefusedError);
  expect(await store.documents({ kind: 'plan-item' })).toEqual([]);
  expect(await book.notes.keepPlan(locked, [madePlanItem()])).toHaveLength(1);
});

test('a heel below level is kept for a tendon that is sore at the heel bone only with its reason', async () => {
  const { book, id } = await opened();
  const visit = { ...madeVisit(), personId: id, safety: clear, sore: { left: 'no', right: 'both-places' } as const };
  const step = madeExercise('step-raise', { side: 'right', lowestFootDeg: -10 });
  await expect(book.notes.keepPlan(visit, [step])).rejects.toMatchObject({
    rules: ['insertion-step', 'insertion-range'],
  });
  const goneOver = ['insertion-step', 'insertion-range'].map((rule) => ({ rule, reason: 'calm for three months' }));
  const [kept] = await book.notes.keepPlan(visit, [{ ...step, goneOver }]);
  expect((await book.notes.plan(id, [kept]))[0].body.goneOver).toEqual(goneOver);
});
