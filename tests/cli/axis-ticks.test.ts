import { expect, test } from 'vitest';
import { axisTicks } from '../../apps/cli/src/axis-ticks.ts';

test('round values inside the span, with the decimals that they need', () => {
  expect(axisTicks(-120, 118, 5)).toEqual({ values: [-100, -50, 0, 50, 100], decimals: 0 });
  const fine = axisTicks(0.61, 1.39, 4);
  expect(fine.values.map((value) => value.toFixed(fine.decimals))).toEqual(['0.8', '1.0', '1.2']);
  expect(axisTicks(0, 0.05, 5).decimals).toBe(2);
});
