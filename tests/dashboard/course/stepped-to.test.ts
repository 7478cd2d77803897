import { expect, test } from 'vitest';
import { steppedTo } from '../../../apps/dashboard/src/course/stepped-to.ts';

const range = { begin: 8, most: 25 };

test('the first press begins, whichever it is; the others step, and none leaves the range', () => {
  expect([steppedTo(null, -2, range), steppedTo(null, 0.5, range)]).toEqual([8, 8]);
  expect([steppedTo(8, 0.5, range), steppedTo(8, -2, range)]).toEqual([8.5, 6]);
  expect([steppedTo(24.5, 2, range), steppedTo(0.5, -2, range)]).toEqual([25, 0]);
});

test('tenths that are added stay tenths', () => {
  const tenths = Array.from({ length: 3 }).reduce<number>((value) => steppedTo(value, 0.1, range), 0);
  expect(tenths).toBe(0.3);
});
