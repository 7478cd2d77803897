import { expect, test } from 'vitest';
import { minutesAndSeconds, restNews } from '../../../apps/dashboard/src/journey/rest-news.ts';

test.each([
  [61, 60.2, undefined],
  [60.2, 60, 'one-minute'],
  [60.2, 59.9, 'one-minute'],
  [60, 59.8, undefined],
  [30.1, 29.9, 'half-a-minute'],
  [0.2, 0, 'over'],
  [0, 0, undefined],
  // a tab that slept tells the last mark only
  [90, 12, 'half-a-minute'],
  [90, 0, 'over'],
] as const)('from %s s to %s s left the news is %s', (before, now, expected) => {
  expect(restNews(before, now)).toBe(expected);
});

test('a countdown shows the second that has begun, and stops at zero', () => {
  expect([120, 119.2, 60, 59.01, 9, 0.3, 0, -5].map(minutesAndSeconds)).toEqual([
    '2:00',
    '2:00',
    '1:00',
    '1:00',
    '0:09',
    '0:01',
    '0:00',
    '0:00',
  ]);
});
