import { countStandardError } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';

test('the board and the level floor have published errors of a count', () => {
  expect(countStandardError('single-leg.incline10')).toBe(2.25);
  expect(countStandardError('single-leg.floor')).toBe(2.07);
});

test('any other way of testing takes the cautious change of six repetitions: 6 / (1.96 sqrt 2) = 2.165', () => {
  for (const id of ['single-leg.bent-knee', 'single-leg.step', 'of-another-version']) {
    expect(Math.abs(countStandardError(id) - 2.1646), id).toBeLessThan(0.0001);
  }
});

test('every protocol has an error above zero', () => {
  for (const { id } of PROTOCOLS) expect(countStandardError(id), id).toBeGreaterThan(1);
});
