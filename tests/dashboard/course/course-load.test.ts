import { casebookOf } from '@surae/casebook';
import { MemoryStore } from '@surae/storage';
import { expect, test } from 'vitest';
import { courseLoad } from '../../../apps/dashboard/src/course/course-load.ts';
import { advisedPerson, inMarch, madeDone } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';
import { tellDiary } from '../../support/told-diary.ts';

test('a diary of eight weeks has every part, and only the leg whose flares follow the load has a threshold', async () => {
  const store = new MemoryStore();
  await tellDiary(store, '2026-11-30');
  const [person] = casebookOf(await store.documents({})).people;
  const { diary, runs, flares, matched, unmatched } = courseLoad(person, '2026-11-30');
  expect(diary?.days).toHaveLength(42);
  expect(diary?.weeks).toHaveLength(6);
  expect(runs).toHaveLength(6);
  expect(flares.map(({ side, kind, found }) => [side, kind, found.held])).toEqual([
    ['left', 'exercises', 'cannot-tell'],
    ['left', 'running', 'cannot-tell'],
    ['right', 'exercises', 'yes'],
    ['right', 'running', 'cannot-tell'],
  ]);
  // no flare after 6.8 minutes, and every one after 7.5
  const { found } = flares[2];
  if (found.held !== 'yes') throw new Error('not told');
  expect(found.threshold).toBeGreaterThan(6.7);
  expect(found.threshold).toBeLessThan(7.5);
  expect(matched.length).toBeGreaterThan(2);
  expect(matched.every(({ points }) => points.length > 1)).toBe(true);
  expect(unmatched.ownWords).toBe(1);
});

test('without a diary there is nothing, and no part is made up', () => {
  expect(courseLoad(advisedPerson(), inMarch(31))).toEqual({
    diary: null,
    runs: [],
    flares: [],
    matched: [],
    moreLoads: 0,
    unmatched: { ownWords: 0, amounts: 0, pain: 0 },
    pushes: [],
  });
});

test('loads that were done once, and those beyond the six newest, are counted and not drawn', () => {
  const items = [madeExercise('one-leg-raise', { side: 'right', from: inMarch(1) })];
  const done = Array.from({ length: 8 }, (_, i) =>
    [1, 2].map((on) => madeDone('item-1-0', i + on, { sets: i + 1, painDuring: 2 })),
  );
  const once = madeDone('item-1-0', 20, { sets: 9, painDuring: 2 });
  const to = madeDone('item-1-0', 32, { on: '2026-04-01', sets: 9, painDuring: 2 });
  const { matched, moreLoads } = courseLoad(
    advisedPerson({ plans: [{ day: 1, items }], done: [...done.flat(), once, to] }),
    inMarch(31),
  );
  expect(matched.map(({ sets }) => sets)).toEqual([8, 7, 6, 5, 4, 3]);
  expect(moreLoads).toBe(3);
});
