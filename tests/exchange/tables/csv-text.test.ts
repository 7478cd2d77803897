import { csvText } from '@surae/exchange';
import { unguarded } from '@surae/records';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvCells } from '../../support/csv-rows.ts';
import { runs } from '../../support/runs.ts';

test('cells are quoted where they must be, and every line ends in CR LF', () => {
  expect(
    csvText(
      ['a', 'b'],
      [
        ['1', 'x,y'],
        ['he said "no"', 'two\nlines'],
      ],
    ),
  ).toBe('a,b\r\n1,"x,y"\r\n"he said ""no""","two\nlines"\r\n');
});

test('a number stays a number, and what was not measured is nothing', () => {
  expect(csvText(['a', 'b', 'c'], [[-5, null, false]])).toBe('a,b,c\r\n-5,,false\r\n');
});

test('no text is run by a spreadsheet, not even the name of a column', () => {
  expect(csvText(['=a', 'b'], [['+1', '@x']])).toBe("'=a,b\r\n+1,'@x\r\n");
});

test('an outside parser reads back what is written, whatever the text', () => {
  const texts = fc.oneof(fc.string(), fc.stringMatching(/^[-=+@'",;\r\n\t a1]{1,6}$/));
  fc.assert(
    fc.property(fc.array(fc.tuple(texts, texts), { minLength: 1 }), (rows) => {
      const all = [['one', 'two'], ...rows, ['end', 'end']];
      const cells = csvCells(csvText(all[0], all.slice(1)));
      expect(cells.map((row) => row.map(unguarded))).toEqual(all);
    }),
    runs(300, 30_000),
  );
});
