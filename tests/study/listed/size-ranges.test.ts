import { expect, test } from 'vitest';
import { readSize, SIZE_RANGES, type SizeName } from '../../../packages/study/src/listed/size-ranges.ts';

const names = Object.keys(SIZE_RANGES) as SizeName[];

test.each(names)('%s is taken at the ends of its range and refused beyond them', (name) => {
  const { least, greatest, unit } = SIZE_RANGES[name];
  expect([readSize(name, `${least}`), readSize(name, `${greatest}`)]).toEqual([least, greatest]);
  const expected = `a number of ${least} to ${greatest} ${unit}, with a point for decimals`;
  for (const text of [`${least * 0.9}`, `${greatest * 1.1}`, '', 'x']) {
    expect(readSize(name, text)).toEqual({ expected });
  }
});

test('a lever in centimetres, a mass in grams and a decimal comma are noticed', () => {
  const refused = [
    readSize('heel-lever-mm', '17.5'),
    readSize('body-mass-kg', '72000'),
    readSize('body-mass-kg', '72,5'),
  ];
  expect(refused.map((size) => typeof size)).toEqual(['object', 'object', 'object']);
});
