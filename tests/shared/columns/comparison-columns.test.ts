import { CHANGE_COLUMNS, LEG_COLUMNS, LEGS_COLUMNS, RATIO_COLUMNS } from '@surae/shared';
import { expect, test } from 'vitest';

const tables = { legs: [...LEGS_COLUMNS, ...RATIO_COLUMNS], leg: LEG_COLUMNS, change: CHANGE_COLUMNS };

test.each(Object.entries(tables))(
  'the keys of the table %s are its own, and no key is a level of another',
  (_, columns) => {
    const keys = columns.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.filter((key) => keys.some((other) => other.startsWith(`${key}.`)))).toEqual([]);
  },
);

test('every bound stands beside its figure, in its unit', () => {
  for (const columns of Object.values(tables)) {
    for (const { key, unit } of columns.filter((one) => one.key.endsWith('.low'))) {
      const bare = key.slice(0, -'.low'.length);
      const others = columns.filter((one) => one.key === `${bare}.value` || one.key === `${bare}.high`);
      expect(
        others.map((one) => one.unit),
        key,
      ).toEqual([unit, unit]);
    }
  }
});
