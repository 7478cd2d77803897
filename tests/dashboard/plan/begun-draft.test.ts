import { expect, test } from 'vitest';
import { begunDraft } from '../../../apps/dashboard/src/plan/begun-draft.ts';
import { undone } from '../../../apps/dashboard/src/plan/plan-draft.ts';
import { madeExercise, madePlanItem } from '../../support/plan-items.ts';

test('lines of the same day stand as they were, with nothing to undo', () => {
  const items = [madeExercise('one-leg-raise', { decision: 'changed', repetitions: 13 })];
  const draft = begunDraft(items, '2026-03-01');
  expect(draft).toEqual({ items, before: [] });
  expect(undone(draft)).toEqual(draft);
});

test('lines of a day before begin today, and what had an end lasts as long', () => {
  const items = [madeExercise('one-leg-raise'), madePlanItem({ until: '2026-03-15' })];
  // over the end of a month, and over the change of the clocks
  expect(begunDraft(items, '2026-04-02').items.map(({ from, until }) => [from, until])).toEqual([
    ['2026-04-02', null],
    ['2026-04-02', '2026-04-16'],
  ]);
});

test('a clock that was put back moves nothing', () => {
  const items = [madePlanItem({ from: '2026-03-05', until: '2026-03-09' })];
  expect(begunDraft(items, '2026-03-01').items).toEqual(items);
});
