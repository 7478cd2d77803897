import { SET_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';
import { BELOW_SHARES, COUNT_SHARES } from '../../../shared/src/columns/height-shares.ts';

const byKey = new Map(SET_COLUMNS.map((column) => [column.key, column]));
const fieldOf = (key: string): string | undefined => byKey.get(key)?.field;

test.each([
  ['measures.displacement_m', 'measures.displacement_low_m', 'measures.displacement_high_m'],
  ['measures.period_drift_s', 'measures.period_drift_low_s', 'measures.period_drift_high_s'],
  ['measures.height_slope_mm', 'measures.height_slope_low_mm', 'measures.height_slope_high_mm'],
  ['measures.height_slope_percent', 'measures.height_slope_low_percent', 'measures.height_slope_high_percent'],
])('the bounds of %s stand beside it, in its unit, each in its own field', (value, low, high) => {
  const [field, unit] = [fieldOf(value)?.replace(/\.value$/, ''), byKey.get(value)?.unit];
  expect([fieldOf(low), fieldOf(high)]).toEqual([`${field}.low`, `${field}.high`]);
  expect([byKey.get(low)?.unit, byKey.get(high)?.unit]).toEqual([unit, unit]);
  const at = SET_COLUMNS.findIndex((column) => column.key === value);
  expect(SET_COLUMNS.slice(at, at + 3).map((column) => column.key)).toEqual([value, low, high]);
});

test('work is there under each convention, for the set and for what was scored, with its uncertainty behind it', () => {
  for (const [prefix, field] of [
    ['measures.work', 'measures.work'],
    ['measures.scored_work', 'measures.scoredWork'],
  ]) {
    for (const kind of ['heel', 'ankle', 'platform', 'rise']) {
      expect(fieldOf(`${prefix}_${kind}_j`)).toBe(`${field}.${kind}J`);
      expect(fieldOf(`${prefix}_${kind}_u_j`)).toBe(`${field}.${kind}UJ`);
    }
  }
});

test('each share has a column that names it in percent and reads its own place in the list', () => {
  BELOW_SHARES.forEach((share, i) => {
    const field = `measures.fatigue.firstBelow.${i}.repetition`;
    expect(fieldOf(`measures.first_below_${(100 * share).toFixed(0)}`)).toBe(field);
  });
  COUNT_SHARES.forEach((share, i) => {
    expect(fieldOf(`measures.count_from_${(100 * share).toFixed(0)}`)).toBe(`measures.countAtFraction.${i}.count`);
  });
});
