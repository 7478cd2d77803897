import { checkLines, type LineLayout } from '@surae/sensors';
import { expect, test } from 'vitest';
import { fieldsOf } from '../../../packages/sensors/src/decode/line-layout.ts';

test('fields lie between delimiters, without the blanks around them', () => {
  const texts = (line: string, delimiter: LineLayout['delimiter']): [string, number][] =>
    fieldsOf(line, delimiter).map(({ text, at }) => [text, at]);
  expect(texts('1; -2.5;;', ';')).toEqual([
    ['1', 0],
    ['-2.5', 3],
    ['', 8],
    ['', 9],
  ]);
  expect(texts(' 1  2\t3 ', 'blanks')).toEqual([
    ['1', 1],
    ['2', 4],
    ['3', 6],
  ]);
  expect(texts('1\t 2', 'tab')).toEqual([
    ['1', 0],
    ['2', 3],
  ]);
});

const force = { kind: 'channel', quantity: 'force', axis: null, unit: 'N' } as const;
const found = (change: object): string[] =>
  checkLines({ delimiter: ',', decimal: '.', columns: [force], ...change }).map(
    ({ path, expected, actual }) => `${path}: ${expected}, not ${actual}`,
  );

test('a layout that cannot be used says where', () => {
  expect(found({})).toEqual([]);
  expect(found({ columns: 'header' })).toEqual([]);
  expect(found({ decimal: ',' })).toEqual(['decimal: another sign than the delimiter, not ","']);
  expect(found({ columns: [{ kind: 'counter' }] })).toEqual(['columns: at least one channel, not none']);
  expect(found({ columns: [force, force] })).toEqual(['columns[1]: each column once, not force again']);
  expect(found({ columns: [{ ...force, unit: 'kg' }] })).toEqual([
    'columns[0].unit: N, kN, mN, kgf, gf, [lbf_av], not "kg"',
  ]);
  expect(found({ columns: [{ ...force, scale: 0 }] })).toEqual([
    'columns[0].scale: a finite number other than 0, not 0',
  ]);
  expect(found({ columns: [{ ...force, offset: NaN }] })).toEqual(['columns[0].offset: a finite number, not NaN']);
  expect(found({ columns: [force, { kind: 'time', unit: 'ms', scale: -1, modulus: 0 }] })).toEqual([
    'columns[1].modulus: a number above 0, not 0',
    'columns[1].scale: a number above 0, not -1',
  ]);
});
