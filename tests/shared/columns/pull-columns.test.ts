import { PULL_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const keys = PULL_COLUMNS.map(({ key }) => key);

test('no key twice, and none that is a level of another', () => {
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) expect(keys.filter((other) => other.startsWith(`${key}.`))).toEqual([]);
});

test('forces end in their unit, in N or N.m', () => {
  for (const { key, unit } of PULL_COLUMNS) {
    if (unit === 'N') expect(key).toMatch(/_n$/);
    if (unit === 'N.m') expect(key).toMatch(/_nm$/);
    if (/_n$/.test(key)) expect(unit).toBe('N');
  }
});

test('an unknown calibration is said to be left out', () => {
  const column = PULL_COLUMNS.find(({ key }) => key === 'calibration_u_percent');
  expect([column?.unit, column?.factor]).toEqual(['%', 100]);
  expect(column?.description).toMatch(/empty is not known and then left out/);
});
