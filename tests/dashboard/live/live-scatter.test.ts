import { expect, test } from 'vitest';
import { liveScatter } from '../../../apps/dashboard/src/live/live-scatter.ts';

const line = (values: readonly number[], stepS = 0.1) => ({
  timesS: Float64Array.from(values, (_, i) => i * stepS),
  values: Float64Array.from(values),
});

test('the scatter is that of the last second, holes left out', () => {
  // 2, 4, 4, 4, 5, 5, 7, 9: the squares about their mean of 5 sum to 32
  const last = [2, 4, 4, 4, 5, 5, 7, 9];
  const expected = Math.sqrt(32 / 7);
  expect(Math.abs(liveScatter(line(last))! - expected)).toBeLessThan(1e-12);
  expect(Math.abs(liveScatter(line([900, 900, 900, ...last, NaN, NaN]))! - expected)).toBeLessThan(1e-12);
});

test('of too little nothing is told', () => {
  expect(liveScatter(line([1, 2, 3, 4]))).toBeNull();
  expect(liveScatter(line([]))).toBeNull();
});
