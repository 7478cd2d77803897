import { dayNumber, earliestDay } from '@surae/casebook';
import { expect, test } from 'vitest';

const at = '2026-05-17T09:30:00.000+01:00';

test('a month counts from its first day, a year likewise, and an untold beginning from when it was written down', () => {
  for (const [began, day] of [
    ['2026-05-12', '2026-05-12'],
    ['2026-05', '2026-05-01'],
    ['2026', '2026-01-01'],
    [null, '2026-05-17'],
  ] as const)
    expect(earliestDay({ began, at }), String(began)).toBe(dayNumber(day));
});

test('a day that cannot be read is none', () => {
  expect(earliestDay({ began: 'spring', at })).toBeNull();
  expect(earliestDay({ began: null, at: '' })).toBeNull();
});
