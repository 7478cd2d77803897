import { expect, test } from 'vitest';
import { meanSquares } from '../../../packages/analysis/src/agreement/mean-squares.ts';
import { varianceComponents } from '../../../packages/analysis/src/agreement/variance-components.ts';
import '../../support/close.ts';
import { ratingRows } from '../../support/rating-fixture.ts';

test('the components of Shrout & Fleiss follow from their mean squares', () => {
  const { subjects, raters, residual, belowZero } = varianceComponents(meanSquares(ratingRows('shrout-fleiss-1979')));
  expect([subjects, raters, residual]).toBeCloseToEach([(11.24167 - 1.01944) / 4, (32.48611 - 1.01944) / 6, 1.01944], {
    rtol: 1e-5,
    atol: 0,
  });
  expect(belowZero).toEqual([]);
});

test('a component below zero is told and not cut off', () => {
  // both subjects have the mean 2: all spread is in the residual
  const { subjects, raters, residual, belowZero } = varianceComponents(
    meanSquares([
      [1, 3],
      [3, 1],
    ]),
  );
  expect([subjects, raters, residual]).toEqual([-2, -2, 4]);
  expect(belowZero).toEqual(['subjects', 'raters']);
});
