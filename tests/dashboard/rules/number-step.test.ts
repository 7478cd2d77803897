import { RULE_NUMBER_BOUNDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { steppedNumber } from '../../../apps/dashboard/src/rules/number-step.ts';

const share = RULE_NUMBER_BOUNDS.find(({ number }) => number === 'guidance.share-done-least')!;

test('presses go by the step, to the ends, and no further', () => {
  expect(steppedNumber(0.9, -1, share)).toBe(0.85);
  expect(steppedNumber(0.9, 1, share)).toBe(0.95);
  expect(steppedNumber(0.95, 5, share)).toBe(1);
  expect(steppedNumber(0.9, 'least', share)).toBe(0.8);
  expect(steppedNumber(0.8, -5, share)).toBe(0.8);
  expect(steppedNumber(0.8, 'most', share)).toBe(1);
});
