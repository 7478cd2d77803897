import { expect, test } from 'vitest';
import { leastCount, MOST_COUNT } from '../../../packages/analysis/src/design/least-count.ts';

test.each([2, 3, 63, 64, 65, 4097, MOST_COUNT])('finds %d as the first that holds', (first) => {
  expect(leastCount(2, (count) => count >= first)).toBe(first);
});

test('what never holds is no number', () => {
  expect(leastCount(2, (count) => count > MOST_COUNT)).toBeUndefined();
});
