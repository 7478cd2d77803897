import { expect, test } from 'vitest';
import { hopEntryCells } from '../../../packages/study/src/listed/hop-entry-cells.ts';

test('cells become facts; an empty or unknown one was not asked', () => {
  expect(
    hopEntryCells({
      safety_clear: 'yes',
      valid_raises: '22',
      pain_on_raise: '1',
      pain_on_trial_hops: '2',
      days_since_flare: '9',
    }),
  ).toEqual({
    safetyClear: true,
    validRaises: { count: 22, low: 22, high: 22 },
    painOnRaise: 1,
    painOnTrialHops: 2,
    daysSinceFlare: 9,
  });
  expect(
    hopEntryCells({ safety_clear: 'perhaps', valid_raises: 'many', pain_on_raise: '11', days_since_flare: '-1' }),
  ).toEqual({});
});
