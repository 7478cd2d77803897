import { expect, test } from 'vitest';
import { slowDrift } from '../../../packages/analysis/src/movement/body-drift.ts';
import '../../support/close.ts';

test('a constant is its own drift', () => {
  expect(slowDrift(new Float64Array(100).fill(2), 20, 10)).toBeCloseToEach(new Float64Array(100).fill(2), {
    rtol: 0,
    atol: 0,
  });
});

test('a line of 0.001 per sample is followed away from the ends', () => {
  const line = Float64Array.from({ length: 2000 }, (_, i) => 0.001 * i);
  const drift = slowDrift(line, 20, 10);
  expect(drift.subarray(300, 1700)).toBeCloseToEach(line.subarray(300, 1700), { rtol: 0, atol: 1e-3 });
});

test('repetitions of 2 s leave less than a tenth of their size in it', () => {
  const signal = Float64Array.from({ length: 1200 }, (_, i) => Math.cos((2 * Math.PI * i) / 40));
  expect(Math.max(...slowDrift(signal, 20, 24).map(Math.abs))).toBeLessThan(0.08);
});
