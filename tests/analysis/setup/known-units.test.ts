import { expect, test } from 'vitest';
import { KNOWN_UNITS } from '../../../packages/analysis/src/setup/known-units.ts';
import type { Quantity } from '../../../packages/analysis/src/trace.ts';
import { units } from '../../../packages/records/src/units.ts';

test('the size of each unit is the one by which files are read', () => {
  for (const [quantity, list] of Object.entries(KNOWN_UNITS)) {
    for (const { ucum, toSi } of list) {
      const unit = units[quantity as Quantity].find((one) => one.ucum === ucum)!;
      const scale = unit.toSi;
      const size = 'divide' in scale ? 1 / scale.divide : scale.multiply;
      expect(Math.abs(toSi / size - 1), ucum).toBeLessThan(1e-12);
    }
    expect(list.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 9);
  }
});
