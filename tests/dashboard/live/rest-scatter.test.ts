import { expect, test } from 'vitest';
import { restScatter } from '../../../apps/dashboard/src/live/rest-scatter.ts';

const timesS = Float64Array.from({ length: 400 }, (_, i) => i / 100);
const tremble = (i: number): number => (i % 2 === 0 ? 1 : -1);

test('the quietest quarter of a second counts, not the effort beside it', () => {
  const samples = timesS.map((timeS, i) => (timeS < 2 ? tremble(i) : 100 * timeS + 9 * tremble(i)));
  // of 1 and -1 in turn: close to 1, with n - 1 in the divisor
  expect(Math.abs(restScatter(timesS, samples)! - 1)).toBeLessThan(0.03);
  expect(
    restScatter(
      timesS,
      samples.map((value) => 10 * value),
    ),
  ).toBeGreaterThan(9.7);
});

test('of too little nothing can be had', () => {
  expect(restScatter(timesS.subarray(0, 10), new Float64Array(10))).toBeNull();
});
