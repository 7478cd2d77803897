import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvText } from '../../apps/cli/src/csv-text.ts';
import { csvCells } from '../support/csv-rows.ts';

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

test('an outside parser reads back what is written, whatever the text', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.string(), fc.string()), { minLength: 1 }), (rows) => {
      const last = ['end', 'end'];
      expect(csvCells(csvText(['one', 'two'], [...rows, last]))).toEqual([['one', 'two'], ...rows, last]);
    }),
    { seed: 20261124, numRuns: 300 },
  );
});
