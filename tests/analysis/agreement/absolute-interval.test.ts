import { expect, test } from 'vitest';
import { isAbsoluteIntervalNarrow } from '../../../packages/analysis/src/agreement/absolute-interval.ts';
import { agreementOf } from '../../../packages/analysis/src/agreement/agreement.ts';
import { agreementDefaults } from '../../../packages/analysis/src/assess/defaults/agreement.ts';
import { ratingRows } from '../../support/rating-fixture.ts';

const of = (raters: number, residual: number, raterCount: number): boolean =>
  isAbsoluteIntervalNarrow({ subjects: 9, raters, residual, belowZero: [] }, raterCount, agreementDefaults.narrow);

test.each([
  [1, 4, 2, false],
  [1.99, 4, 2, false],
  [2, 4, 2, true],
  [8, 4, 9, true],
  [8, 4, 10, false],
  // what came out below zero, or not at all, makes nothing too narrow
  [-1, 4, 2, false],
  [0, 0, 2, false],
  [1, 0, 2, true],
])('raters %d and the rest %d with %d raters: %s', (raters, residual, raterCount, narrow) => {
  expect(of(raters, residual, raterCount)).toBe(narrow);
});

test('Shrout & Fleiss (1979): four judges who differ by 5.2 where the rest is 1.0; Weir (2005): two days that do not', () => {
  const found = (name: string) => {
    const values = ratingRows(name);
    const raters = values[0].map((_, i) => `R${i}`);
    const settings = { ...agreementDefaults, scale: 'difference', counts: false } as const;
    return agreementOf({ subjects: values.map((_, i) => `P${i}`), raters, values }, settings).absoluteIntervalNarrow;
  };
  expect(['shrout-fleiss-1979', 'weir-2005-a'].map(found)).toEqual([true, false]);
});
