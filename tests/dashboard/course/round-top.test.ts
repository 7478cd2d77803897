import { expect, test } from 'vitest';
import { roundTop } from '../../../apps/dashboard/src/course/round-top.ts';

test.each([
  [7.5, 8],
  [8, 8],
  [8.1, 10],
  [25, 30],
  [560, 600],
  [5650, 6000],
  [0.3, 0.3],
  [0, 1],
])('above %f an axis ends at %f', (most, top) => {
  expect(roundTop(most)).toBe(top);
});
