import { RETEST_TIMES, TODAY_RULES } from '@surae/shared';
import { expect, test } from 'vitest';

test('re-tests come in order of whole weeks, and their times are said to have no source', () => {
  expect(RETEST_TIMES.map(({ value }) => value / 7)).toEqual([2, 4, 8, 12]);
  expect(RETEST_TIMES.map(({ what }) => what)).toEqual(['tolerance', 'test', 'test', 'test']);
  for (const { mark, source } of [...RETEST_TIMES, TODAY_RULES.furtherFrom, TODAY_RULES.furtherUntil])
    expect([mark, source]).toEqual(['common-practice', 'common practice, no source']);
});

test('a visit that stands early for one time never stands for the one before it', () => {
  const times = RETEST_TIMES.map(({ value }) => value);
  for (const [i, time] of times.entries()) {
    const before = times[i - 1] ?? 0;
    expect(time - TODAY_RULES.retestEarly.value).toBeGreaterThan(before);
  }
  expect(TODAY_RULES.furtherFrom.value).toBeLessThan(TODAY_RULES.furtherUntil.value);
});
