import { expect, test } from 'vitest';
import { partDateOf } from '../../../apps/dashboard/src/words/part-dates.ts';

test('a part of a date is said as far as it is known', () => {
  expect(['2026', '2026-08', '2026-08-24'].map((part) => partDateOf(part))).toEqual([
    '2026',
    'August 2026',
    '24 Aug 2026',
  ]);
  expect(partDateOf('2026-12')).toBe('December 2026');
});
