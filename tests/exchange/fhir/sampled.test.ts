import { sampledOf } from '@surae/exchange';
import { expect, test } from 'vitest';

test('equal steps: period in milliseconds, nothing interpolated, holes are errors', () => {
  const timesS = Float64Array.of(1, 1.01, 1.02, 1.05, 1.06);
  const samples = Float64Array.of(700, Number.NaN, -0.5, 1e-9, 2);
  expect(sampledOf(timesS, samples)).toEqual({
    periodMs: 10,
    data: '700 E -0.5 E E 0.000000001 2',
    fromS: 1,
    toS: 1.06,
  });
});

test('small wobble of a clock is no other step; unequal steps and pauses cannot be told', () => {
  const wobbly = Float64Array.of(0, 0.0101, 0.0199, 0.03);
  expect(sampledOf(wobbly, new Float64Array(4))?.data).toBe('0 0 0 0');
  expect(sampledOf(Float64Array.of(0, 0.01, 0.025, 0.03), new Float64Array(4))).toBeNull();
  expect(sampledOf(Float64Array.of(0, 0.01, 0.02, 100), new Float64Array(4))).toBeNull();
  expect(sampledOf(Float64Array.of(0), new Float64Array(1))).toBeNull();
});
