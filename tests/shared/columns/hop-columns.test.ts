import { HOP_COLUMNS, HOP_SERIES_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

test('keys are unique, and those with a unit end in it', () => {
  for (const columns of [HOP_COLUMNS, HOP_SERIES_COLUMNS]) {
    expect(new Set(columns.map(({ key }) => key)).size).toBe(columns.length);
    for (const { key, unit } of columns) {
      if (unit !== '1') expect(key.endsWith(`_${unit.toLowerCase().replace('/', '_per_')}`)).toBe(true);
    }
  }
});
