import { isJudgedByHand } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madeSet, madeVisit } from '../support/made-visit.ts';

test('a visit is judged by hand as soon as a person said anything of a repetition', () => {
  const body = { setId: 'set-left', repetition: 1, criterion: null, verdict: 'no', why: null } as const;
  const byHand = [{ id: 'h', at: '2026-03-01T09:32:00Z', author: 'K', body }];
  expect(isJudgedByHand(madeVisit(madeSet('left', null), madeSet('right', null, { byHand })))).toBe(true);
  expect(isJudgedByHand(madeVisit(madeSet('left', null), madeSet('right', null, { byHand: [] })))).toBe(false);
});
