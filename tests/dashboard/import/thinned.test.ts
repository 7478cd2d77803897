import { expect, test } from 'vitest';
import { thinned } from '../../../apps/dashboard/src/import/thinned.ts';

test('a short trace is itself, and a copy', () => {
  const values = Float64Array.of(1, Number.NaN, 3);
  const line = thinned(Float64Array.of(0, 1, 2), values);
  expect([...line.values]).toEqual([1, Number.NaN, 3]);
  expect(line.values).not.toBe(values);
});

test('of a long one no peak is lost, times go on, and a gap stays one', () => {
  const times = Float64Array.from({ length: 500_000 }, (_, i) => i / 1000);
  const values = new Float64Array(500_000);
  values[123_456] = 9;
  values[400_001] = -4;
  values.fill(Number.NaN, 200_000, 210_000);
  const line = thinned(times, values);
  expect(line.values.length).toBeLessThan(3000);
  expect([Math.max(...line.values.filter(Number.isFinite)), Math.min(...line.values.filter(Number.isFinite))]).toEqual([
    9, -4,
  ]);
  for (let i = 1; i < line.times.length; i += 1) expect(line.times[i]!).toBeGreaterThan(line.times[i - 1]!);
  expect(line.values.some(Number.isNaN)).toBe(true);
});
