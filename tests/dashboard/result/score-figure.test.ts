import { expect, test } from 'vitest';
import { scoreFigure } from '../../../apps/dashboard/src/result/score-figure.ts';
import { madeReport, sureCount } from '../../support/made-visit.ts';

const counts = { ...sureCount(12), low: 10, high: 17, valid: 9, scored: 9, scoredLow: 7, scoredHigh: 11 };

test('the number that counts with its own bounds, and not with those of what was tried', () => {
  expect(scoreFigure(madeReport('left', counts, 'pain'))).toEqual({
    kind: 'measured',
    value: 9,
    low: 7,
    high: 11,
    atLeast: false,
  });
});

test('a cap, or an end that leaves the count open upwards, makes it a lower bound', () => {
  expect(scoreFigure(madeReport('left', counts, 'cap')).atLeast).toBe(true);
  expect(scoreFigure(madeReport('left', { ...counts, censored: true }, 'fatigue')).atLeast).toBe(true);
});
