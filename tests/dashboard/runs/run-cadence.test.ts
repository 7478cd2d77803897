import { expect, test } from 'vitest';
import { runCadence } from '../../../apps/dashboard/src/runs/run-cadence.ts';

const all = (value: number | null, count = 10): readonly (number | null)[] =>
  Array.from({ length: count }, () => value);

test.each([
  // by hand: the limits, and one beyond each
  [59, null],
  [60, { counted: 60, as: 'one-foot', perMin: 120 }],
  [83, { counted: 83, as: 'one-foot', perMin: 166 }],
  [105, { counted: 105, as: 'one-foot', perMin: 210 }],
  [106, { counted: 106, as: 'unclear', perMin: null }],
  [129, { counted: 129, as: 'unclear', perMin: null }],
  [130, { counted: 130, as: 'both', perMin: 130 }],
  [230, { counted: 230, as: 'both', perMin: 230 }],
  [231, null],
  [0, null],
] as const)('%s at every point', (value, expected) => {
  expect(runCadence(all(value))).toEqual(expected);
});

test('standing still is no rate of steps, and the middle of the others counts', () => {
  expect(runCadence([0, 0, 160, 170, 172, 10, 240])?.perMin).toBe(170);
  expect(runCadence([0, 160, 171])?.perMin).toBe(166);
});

test('a file that has it at half of its points tells it, and one at fewer does not', () => {
  expect(runCadence([...all(170, 5), ...all(null, 5)])?.perMin).toBe(170);
  expect(runCadence([...all(170, 4), ...all(null, 5)])).toBeNull();
  expect(runCadence(all(null))).toBeNull();
  expect(runCadence([])).toBeNull();
});
