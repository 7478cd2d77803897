import { PLAN_WORDS, SAFETY_LIST_VERSION } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  planAfterVisit,
  planPlacesBefore,
  planSoFar,
  unchangedWords,
} from '../../../apps/dashboard/src/plan/plan-so-far.ts';
import { coursePerson } from '../../support/course-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const safety = { listVersion: SAFETY_LIST_VERSION, seenWhole: true, ticked: [], overridden: [] };

async function planned() {
  const { book, personId } = await coursePerson({ day: '2026-03-02', left: { count: 20 } });
  const begin = async () => {
    const id = await book.beginVisit(personId);
    await book.record(id, { kind: 'visit-safety', safety });
    return id;
  };
  const first = await begin();
  const visit = async (id: string) => (await book.visit(id))!;
  const from = (await visit(first)).begunAt.slice(0, 10);
  const planItemIds = await book.notes.keepPlan(await visit(first), [madeExercise('seated-raise', { from })]);
  await book.record(first, { kind: 'visit-plan', planItemIds });
  const documents = () => book.log.documents(personId);
  return { book, first, begin, visit, from, documents };
}

test('the plan so far is that of the other visits', async () => {
  const { first, begin, visit, from, documents } = await planned();
  const second = await begin();
  expect(planSoFar(await documents(), await visit(second), from)?.items.map(({ body }) => body.code)).toEqual([
    'seated-raise',
  ]);
  expect(planSoFar(await documents(), await visit(first), from)).toBeNull();
});

test('one leaves a visit with what was kept in it, with what went on, or with nothing', async () => {
  const { book, first, begin, visit, documents } = await planned();
  const codes = async (id: string): Promise<readonly (string | null)[]> =>
    planAfterVisit(await documents(), await visit(id)).map(({ body }) => body.code);
  expect(await codes(first)).toEqual(['seated-raise']);
  const second = await begin();
  // the plan was not asked yet
  expect(await codes(second)).toEqual([]);
  await book.record(second, { kind: 'visit-plan', planItemIds: [] });
  expect(await codes(second)).toEqual(['seated-raise']);
  const third = await begin();
  await book.record(third, { kind: 'visit-plan', planItemIds: [], ended: true });
  expect(await codes(third)).toEqual([]);
});

test('what this visit found holds lines of the plan so far back before anything is pressed', async () => {
  const { book, begin, visit, from, documents } = await planned();
  const second = await begin();
  const ticked = { ...safety, ticked: ['safety.fluoroquinolone'] };
  await book.record(second, { kind: 'visit-safety', safety: ticked });
  const found = planSoFar(await documents(), await visit(second), from);
  expect(found?.items).toEqual([]);
  expect(found?.held.map(({ item, rules }) => [item.body.code, rules])).toEqual([['seated-raise', ['safety-lock']]]);
  await book.record(second, { kind: 'visit-plan', planItemIds: [] });
  expect(planAfterVisit(await documents(), await visit(second))).toEqual([]);
});

test('a calendar may hold as many lines as the longest plan before, also where the plan was ended since; that of this visit is none', async () => {
  const { book, first, begin, visit, documents } = await planned();
  const places = async (id: string): Promise<number> => planPlacesBefore(await documents(), await visit(id));
  expect(await places(first)).toBe(0);
  const second = await begin();
  await book.record(second, { kind: 'visit-plan', planItemIds: [], ended: true });
  expect(await places(second)).toBe(1);
  const third = await begin();
  expect(await places(third)).toBe(1);
});

test('what goes on where nothing changes is a plan that has lines, and nothing is said to where all of it is held back', () => {
  const item = { id: 'i', author: 'test', at: '', body: madeExercise('seated-raise') };
  const plan = { visitId: 'v', since: '2026-03-02', items: [item], held: [] };
  expect(unchangedWords(plan)).toBe('Nothing changes: the plan from 2 Mar 2026 goes on');
  const held = { ...plan, items: [], held: [{ item, rules: ['safety-lock'] as const }] };
  expect([unchangedWords(held), unchangedWords(null)]).toEqual([PLAN_WORDS.none.text, PLAN_WORDS.none.text]);
});
