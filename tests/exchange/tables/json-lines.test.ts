import { readJsonLines, tableOf, writeJsonLines } from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryTable } from '../../support/arbitrary-tables.ts';
import { runs } from '../../support/runs.ts';

const shape = {
  name: 'people',
  title: 'People',
  columns: [
    { key: 'who', unit: '1', kind: 'text', description: 'a name', source: 'definition' },
    { key: 'n', unit: '1', kind: 'number', description: 'a number', source: 'definition' },
  ],
} as const;

test('an object a line, null for what was not measured, the sign of zero kept', () => {
  const table = tableOf({
    ...shape,
    rows: [
      ['=1', -0],
      ['x', null],
    ],
  });
  expect(writeJsonLines(table)).toBe('{"who":"=1","n":-0}\n{"who":"x","n":null}\n');
});

test('written, read and written again, every table has the same bytes', () => {
  fc.assert(
    fc.property(arbitraryTable, (table) => {
      const text = writeJsonLines(table);
      const again = readJsonLines(text, table, 'things.jsonl');
      expect(again).toEqual(table);
      expect(writeJsonLines(again)).toBe(text);
    }),
    runs(200, 20_000),
  );
});

test.each([
  ['{"who":"x","n":1}', 'expected a last line that ends, got none'],
  ['{"who":"x"\n', 'row 1: expected an object of JSON'],
  ['[]\n', 'row 1: expected an object of JSON, got []'],
  ['{"who":"x"}\n', 'row 1, column "n": expected one cell, got none'],
  ['{"who":"x","n":1,"m":2}\n', 'row 1, column "m": expected one cell, got a key of no column'],
  ['{"who":"x","n":"1"}\n', 'row 1, column "n": expected number, got string'],
])('%j is refused with its line', (text, words) => {
  expect(() => readJsonLines(text, shape, 'x.jsonl')).toThrow(words);
});
