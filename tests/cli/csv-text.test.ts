import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvText, parseCsvText } from '../../apps/cli/src/csv-text.ts';

test('cells are quoted only where RFC 4180 needs it, and lines end in CR LF', () => {
  expect(
    csvText(
      ['a', 'b'],
      [
        ['1', 'x,y'],
        ['say "no"', 'two\nlines'],
      ],
    ),
  ).toBe('a,b\r\n1,"x,y"\r\n"say ""no""","two\nlines"\r\n');
});

test('what is written is read back, whatever the text', () => {
  const word = fc
    .string({ minLength: 1 })
    .filter((text) => !text.startsWith('#') && text.trim() !== '' && text.trim() === text);
  fc.assert(
    fc.property(fc.array(fc.tuple(word, word), { minLength: 1 }), (rows) => {
      const table = parseCsvText(csvText(['one', 'two'], rows));
      expect(table.header).toEqual(['one', 'two']);
      expect(table.rows.map((row) => row.cells)).toEqual(rows);
    }),
    { seed: 20261124, numRuns: 300 },
  );
});

test('byte order mark, remarks, blank lines and semicolons of a spreadsheet are understood', () => {
  const table = parseCsvText('\uFEFF# made by hand\nfile;side\n\na.csv;left\r\nb.csv;\n');
  expect(table.header).toEqual(['file', 'side']);
  expect(table.rows).toEqual([
    { line: 4, cells: ['a.csv', 'left'] },
    { line: 5, cells: ['b.csv', ''] },
  ]);
});

test('a line number counts the lines inside quotes', () => {
  const table = parseCsvText('a,b\n"x\ny",1\nz,2\n');
  expect(table.rows.map((row) => row.line)).toEqual([2, 4]);
});

test('a quote that is never closed is refused with its line', () => {
  expect(() => parseCsvText('a,b\n1,"x\n')).toThrow(new SyntaxError('line 2: a quote is opened and never closed'));
});
