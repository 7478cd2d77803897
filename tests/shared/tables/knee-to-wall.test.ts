import { KNEE_TO_WALL_CHANGES, KNEE_TO_WALL_SCALES, KNEE_TO_WALL_TRIALS } from '@surae/shared';
import { expect, test } from 'vitest';

test('a stepper begins on a step of its own, within what a shank reaches', () => {
  for (const { step, begin, most } of Object.values(KNEE_TO_WALL_SCALES)) {
    expect((begin.value / step.value) % 1).toBe(0);
    expect((most.value / step.value) % 1).toBe(0);
    expect(begin.value).toBeLessThan(most.value);
    expect(new Set([step.unit, begin.unit, most.unit]).size).toBe(1);
  }
  expect(KNEE_TO_WALL_TRIALS.value).toBe(3);
});

// Powden 2015 (Man Ther 20:524): 1.9 cm or 4.7 degrees with one tester, 1.6 cm or 4.6 degrees with two
test('detectable changes are those of the review, each in the unit that it was taken in', () => {
  const values = (unit: 'cm' | 'deg') => KNEE_TO_WALL_CHANGES[unit].map(({ value }) => value);
  expect(values('cm')).toEqual([1.9, 1.6, 1]);
  expect(values('deg')).toEqual([4.7, 4.6]);
  for (const unit of ['cm', 'deg'] as const) {
    expect(KNEE_TO_WALL_CHANGES[unit].every((one) => one.unit === unit)).toBe(true);
  }
});
