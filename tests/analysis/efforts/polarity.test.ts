import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { findPolarity } from '../../../packages/analysis/src/efforts/polarity.ts';

const rule = effortDefaults.pull;
const pulls = Float64Array.from({ length: 1000 }, (_, i) => (i % 250 > 120 && i % 250 < 220 ? 600 : 20));

test('pulls go away from the level where most of the time is spent', () => {
  expect(findPolarity(pulls, 0.01, rule)).toEqual({ sign: 1, clear: true });
  expect(
    findPolarity(
      pulls.map((value) => -value),
      0.01,
      rule,
    ),
  ).toEqual({ sign: -1, clear: true });
});

test('a signal that is alike both ways does not tell', () => {
  const square = Float64Array.from({ length: 1000 }, (_, i) => (i < 500 ? 0 : 1));
  expect(findPolarity(square, 0.01, rule).clear).toBe(false);
  expect(findPolarity(Float64Array.of(3, 3, 3), 0.01, rule).clear).toBe(false);
});
