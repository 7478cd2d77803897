import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';

test('settings are plain JSON, fresh on every call', () => {
  const first = defaultSettings();
  expect(JSON.parse(JSON.stringify(first))).toEqual(first);
  (first.judging as { draws: number }).draws = 1;
  expect(defaultSettings().judging.draws).toBeGreaterThanOrEqual(100);
});

test('gravity is the standard one', () => {
  expect(defaultSettings().judging.gravityMps2).toBe(9.80665);
});

test('a plain no lies below a plain yes', () => {
  const { plainNoBelow, plainYesAbove } = defaultSettings().judging;
  expect(plainNoBelow).toBeLessThan(plainYesAbove);
});
