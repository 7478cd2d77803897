import { hopTable } from '@surae/simulation';
import { expect, test } from 'vitest';

test('every fault has a unit, a meaning and ranges that do not run back', () => {
  for (const { unit, meaning, amounts } of Object.values(hopTable)) {
    expect([unit.length > 0, meaning.length > 0]).toEqual([true, true]);
    for (const [low, high] of amounts) expect(low).toBeLessThanOrEqual(high);
  }
});
