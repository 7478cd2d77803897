import { MORNING_LIMITS, TODAY_RULES } from '@surae/shared';
import { expect, test } from 'vitest';

test('somebody at home eases off from the same rise that a clinic is told of, and holds before', () => {
  const { holdAbove, easedAbove, holdRise, easedRise } = MORNING_LIMITS;
  expect(easedRise).toBe(TODAY_RULES.morningRiseMost);
  expect(holdRise.value).toBeLessThan(easedRise.value);
  expect(holdAbove.value).toBeLessThan(easedAbove.value);
  for (const limit of Object.values(MORNING_LIMITS))
    expect(limit).toMatchObject({ unit: '1', source: 'common practice, no source', mark: 'common-practice' });
});
