import { InputError, plainVerdict } from '@surae/analysis';
import { COMPARISON_RULES } from '@surae/shared';
import { expect, test } from 'vitest';

const limits = {
  plainNoMost: COMPARISON_RULES.plainNoMost.value,
  plainYesLeast: COMPARISON_RULES.plainYesLeast.value,
};

test.each([
  [0, 'no'],
  [0.2, 'no'],
  [0.2001, 'cannot_tell'],
  [0.5, 'cannot_tell'],
  [0.7999, 'cannot_tell'],
  [0.8, 'yes'],
  [1, 'yes'],
] as const)('a probability of %d is %s', (probability, verdict) => {
  expect(plainVerdict(probability, limits)).toBe(verdict);
});

test('probabilities and limits that make no sense are refused', () => {
  for (const probability of [-0.1, 1.1, Number.NaN])
    expect(() => plainVerdict(probability, limits)).toThrow(InputError);
  expect(() => plainVerdict(0.5, { plainNoMost: 0.5, plainYesLeast: 0.8 })).toThrow(InputError);
  expect(() => plainVerdict(0.5, { plainNoMost: 0.2, plainYesLeast: 0.5 })).toThrow(InputError);
});
