import { IRRITABILITY_GRADES, IRRITABILITY_INPUTS } from '@surae/shared';
import { expect, test } from 'vitest';

test('three grades from low to high', () => {
  expect(IRRITABILITY_GRADES).toEqual(['low', 'moderate', 'high']);
});

test('each input either has limits that rise, or answers that reach every grade', () => {
  for (const [name, entry] of Object.entries(IRRITABILITY_INPUTS)) {
    if ('grades' in entry) expect(Object.values(entry.grades), name).toEqual([...IRRITABILITY_GRADES]);
    else expect(entry.lowMost, name).toBeLessThan(entry.moderateMost);
  }
});

test('no published scale stands behind it, and it says so', () => {
  for (const { mark } of Object.values(IRRITABILITY_INPUTS)) expect(mark).toBe('common-practice');
});
