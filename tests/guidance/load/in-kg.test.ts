import { expect, test } from 'vitest';
import { inKg } from '../../../packages/guidance/src/load/in-kg.ts';

test('a load is in kilograms by its unit, and in none where the unit is no mass here', () => {
  expect(inKg({ value: 2500, unit: 'g' })).toBe(2.5);
  expect(inKg({ value: 5, unit: 'kg' })).toBe(5);
  expect(inKg({ value: 5, unit: '[lb_av]' })).toBeNull();
});
