import { expect, test } from 'vitest';
import { loadNumber, minutesWords, timesWords } from '../../../apps/dashboard/src/course/load-numbers.ts';

test('a load has a tenth under twenty where it is not whole, and none above', () => {
  expect([4.5, 4.04, 0.87, 13.5, 22.5, 120].map(loadNumber)).toEqual(['4.5', '4', '0.9', '13.5', '23', '120']);
});

test('a range is one number where both of its ends read alike, and two where they do not', () => {
  expect(minutesWords([270, 270])).toBe('4.5 min');
  // seated: 0.5 over 2.6 to 3 of 270 s
  expect(minutesWords([45, 51.9])).toBe('0.8 to 0.9 min');
  expect(timesWords([1, 1])).toBe('as much as a raise');
  expect(timesWords([0.5, 0.5])).toBe('0.5 times a raise');
  expect(timesWords([0.5 / 3, 0.5 / 2.6])).toBe('0.17 to 0.19 times a raise');
});
