import { nameScan } from '@surae/exchange';
import { expect, test } from 'vitest';

const holds = nameScan(['Zoë Ångström-Li', '山田 花子', 'Al Bo']);

test.each(['phone of zoe', 'ANGSTROM', 'Ångströms sensor', 'zoe2', '花子のセンサー', 'z.o.e', 'albo'])(
  '%s holds a name',
  (text) => {
    expect(holds(text)).toBe(true);
  },
);

test.each(['heel sensor', 'li-ion cell', 'Al-frame', ''])('%s holds none', (text) => {
  expect(holds(text)).toBe(false);
});
