import { cellsOfLines, csvLines, readCsvTable } from '@surae/exchange';
import { expect, test } from 'vitest';

const shape = {
  name: 'people',
  title: 'People',
  columns: [
    { key: 'who', unit: '1', kind: 'text', description: 'a name', source: 'definition' },
    { key: 'n', unit: '1', kind: 'number', description: 'a number', source: 'definition' },
    { key: 'f', unit: '1', kind: 'flag', description: 'a flag', source: 'definition' },
  ],
} as const;

test('cells come back by their kind', () => {
  expect(readCsvTable("who,n,f\r\n'=1,-0,true\r\n,,\r\n", shape, 'x.csv').rows).toEqual([
    ['=1', -0, true],
    [null, null, null],
  ]);
});

test.each([
  ['who,n\r\n', 'row 1: expected who,n,f, got who,n'],
  ['', 'row 1: expected who,n,f, got nothing'],
  ['who,n,f\r\na,1\r\n', 'row 2: expected 3 cells, got 2'],
  ['who,n,f\r\na,"1,5",\r\n', 'row 2, column "n": expected a number, or nothing, got "1,5"'],
  ['who,n,f\r\na,NaN,\r\n', 'row 2, column "n": expected a number, or nothing, got "NaN"'],
  ['who,n,f\r\na,0x1,\r\n', 'row 2, column "n": expected a number, or nothing, got "0x1"'],
  ['who,n,f\r\na,1,yes\r\n', 'row 2, column "f": expected true, false, or nothing, got "yes"'],
])('%j is refused with its place', (text, words) => {
  expect(() => readCsvTable(text, shape, 'x.csv')).toThrow(words);
});

test('lines without a header give the cells that they were written from', () => {
  const cells = [
    ['=1, "x"', -0.5, true],
    [null, null, null],
    ['two\r\nlines', 1e-7, false],
  ];
  expect(cellsOfLines(csvLines(cells), shape, 'x.csv')).toEqual(cells);
  expect(() => cellsOfLines('a,1,true\r\nb,2\r\n', shape, 'x.csv')).toThrow('row 2: expected 3 cells, got 2');
});
