import { expect, test } from 'vitest';
import { sharedLines } from '../../../apps/dashboard/src/result/shared-lines.ts';

test('what every list holds is said once, and the order of the rest stays', () => {
  expect(
    sharedLines([
      ['a', 'both', 'b'],
      ['both', 'c'],
    ]),
  ).toEqual({ own: [['a', 'b'], ['c']], shared: ['both'] });
});

test('one list shares nothing, and none is nothing', () => {
  expect(sharedLines([['a']])).toEqual({ own: [['a']], shared: [] });
  expect(sharedLines([])).toEqual({ own: [], shared: [] });
});
