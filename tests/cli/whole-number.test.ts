import { expect, test } from 'vitest';
import { UsageError } from '../../apps/cli/src/usage-error.ts';
import { wholeNumber } from '../../apps/cli/src/whole-number.ts';

test('a whole number in its range, both ends included', () => {
  expect([wholeNumber('--n', '0', 0, 7), wholeNumber('--n', '7', 0, 7)]).toEqual([0, 7]);
});

test.each(['8', '-1', '1.5', '', ' 1', '1e1', 'two'])('"%s" is refused with option and range', (text) => {
  expect(() => wholeNumber('--n', text, 0, 7)).toThrow(UsageError);
  expect(() => wholeNumber('--n', text, 0, 7)).toThrow(`--n ${text}: expected a whole number from 0 to 7`);
});
