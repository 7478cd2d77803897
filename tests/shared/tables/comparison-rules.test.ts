import { COMPARISON_RULES, PULL_PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';

const value = (name: keyof typeof COMPARISON_RULES): number => COMPARISON_RULES[name].value;

test('a share or a probability lies between 0 and 1, and limits that come in pairs do not cross', () => {
  for (const name of ['ratioLine', 'plainNoMost', 'plainYesLeast', 'countChangeShare'] as const) {
    expect(value(name) > 0 && value(name) < 1, name).toBe(true);
  }
  expect(value('plainNoMost')).toBeLessThan(value('plainYesLeast'));
  expect(value('ownPairsLeast')).toBeLessThan(value('ownPairsPlain'));
  expect(value('painMostIrritable')).toBeLessThan(value('painMost'));
});

test('what a protocol of isometric efforts says has its home there alone', () => {
  for (const { id, parameters } of PULL_PROTOCOLS) {
    expect(
      Object.keys(COMPARISON_RULES).filter((name) => name in parameters),
      id,
    ).toEqual([]);
  }
  // how close together the best trials lie is the protocol's as well, under the name alikeGood
  expect(COMPARISON_RULES).not.toHaveProperty('trialsAlike');
});

test('pain is of 10', () => {
  for (const name of ['painMost', 'painMostIrritable', 'painRiseMost'] as const) {
    expect(value(name) > 0 && value(name) <= 10, name).toBe(true);
  }
});
