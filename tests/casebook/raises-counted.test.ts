import { isRuptureFirst, raisesCounted, testsSomebody } from '@surae/casebook';
import { expect, test } from 'vitest';
import { madeReport, madeSet, madeVisit, sureCount } from '../support/made-visit.ts';

test('a played set tests nobody, and a simulated one nobody but an invented person', () => {
  const of = (isInvented: boolean): readonly boolean[] =>
    (['live', 'by-hand', 'simulated', 'replayed'] as const).map((origin) => testsSomebody({ origin }, isInvented));
  expect(of(false)).toEqual([true, true, false, false]);
  expect(of(true)).toEqual([true, true, true, false]);
});

test('a count has the bounds of what counted, and no upper one where pain stopped it', () => {
  expect(raisesCounted(madeReport('left', { scored: 12, scoredLow: 11, scoredHigh: 14 }))).toEqual({
    scored: 12,
    low: 11,
    high: 14,
  });
  expect(raisesCounted(madeReport('left', sureCount(12), 'pain'))).toMatchObject({ high: Number.POSITIVE_INFINITY });
  expect(raisesCounted(madeReport('left', sureCount(12), 'technical'))).toBe('not-usable');
});

test('not one raise, tested on somebody, asks for the signs of a rupture on that leg until they were looked for', () => {
  const set = madeSet('left', madeReport('left', sureCount(0)));
  const none = madeVisit(set);
  expect([isRuptureFirst(none, 'left', true), isRuptureFirst(none, 'right', true)]).toEqual([true, false]);
  expect(isRuptureFirst(none, 'left', false)).toBe(false);
  const factsTold = [{ fact: 'rupture-looked', leg: 'left', answer: 'clear', at: set.begunAt } as const];
  expect(isRuptureFirst({ ...none, factsTold }, 'left', true)).toBe(false);
  expect(isRuptureFirst(madeVisit(madeSet('left', madeReport('left', sureCount(1)))), 'left', true)).toBe(false);
});
