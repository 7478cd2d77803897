import { expect, test } from 'vitest';
import { hoursIn } from '../../../apps/dashboard/src/course/hours-in.ts';

test.each([
  ['0', 0],
  ['7.5', 7.5],
  ['24', 24],
  ['24.1', undefined],
  ['', undefined],
  ['all day', undefined],
])('"%s" is %o hours', (text, hours) => {
  expect(hoursIn(text)).toBe(hours);
});
