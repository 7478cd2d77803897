import { COUNT_30_S, FLOOR, TOLERANCE_PROBE } from '@surae/shared';
import { expect, test } from 'vitest';
import { reachedLimit } from '../../../apps/dashboard/src/live/set-limit.ts';

test('a set to fatigue has no limit of its own', () => {
  expect(reachedLimit(200, 600, FLOOR.parameters)).toBeUndefined();
});

test('ten repetitions end the probe of ten', () => {
  expect(reachedLimit(9, 100, TOLERANCE_PROBE.parameters)).toBeUndefined();
  expect(reachedLimit(10, 18, TOLERANCE_PROBE.parameters)).toBe('fixed-count');
});

test('thirty seconds end the count of thirty seconds', () => {
  expect(reachedLimit(40, 29.9, COUNT_30_S.parameters)).toBeUndefined();
  expect(reachedLimit(3, 30, COUNT_30_S.parameters)).toBe('duration');
});

test('a cap that a clinic sets ends a set to fatigue', () => {
  const capped = { ...FLOOR.parameters, repetitionCap: { ...FLOOR.parameters.repetitionCap, value: 50 } };
  expect(reachedLimit(50, 100, capped)).toBe('cap');
});
