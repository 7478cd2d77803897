import { COMPARISON_RULES } from '@surae/shared';
import { expect, test } from 'vitest';

const value = (name: keyof typeof COMPARISON_RULES): number => COMPARISON_RULES[name].value;

test('a share or a probability lies between 0 and 1, and limits that come in pairs do not cross', () => {
  for (const name of ['ratioLine', 'plainNoMost', 'plainYesLeast', 'trialsAlike', 'countChangeShare'] as const) {
    expect(value(name) > 0 && value(name) < 1, name).toBe(true);
  }
  expect(value('plainNoMost')).toBeLessThan(value('plainYesLeast'));
  expect(value('ownPairsLeast')).toBeLessThan(value('ownPairsPlain'));
  expect(value('painMostIrritable')).toBeLessThan(value('painMost'));
});

test('pain is of 10', () => {
  for (const name of ['painMost', 'painMostIrritable', 'painRiseMost'] as const) {
    expect(value(name) > 0 && value(name) <= 10, name).toBe(true);
  }
});
