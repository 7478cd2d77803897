import { expect, test } from 'vitest';
import { asWritten, rowsAfter, writtenRows } from '../../apps/cli/src/written-rows.ts';

test('rows are written as they stand in their file, and counted where a cell breaks its line', () => {
  expect(
    asWritten({
      'a.csv': [
        ['x\r\ny', 1.5, null, true],
        ['=1', 0, '', false],
      ],
      'b.csv': [],
    }),
  ).toEqual({
    'a.csv': { count: 2, text: `"x\r\ny",1.5,,true\r\n'=1,0,,false\r\n` },
    'b.csv': { count: 0, text: '' },
  });
});

test('one after the other they are what they are together', () => {
  const [one, two] = [[[1]], [[2], [3]]];
  expect(rowsAfter(writtenRows(one), writtenRows(two))).toEqual(writtenRows([...one, ...two]));
  expect(rowsAfter(undefined, writtenRows(two))).toEqual(writtenRows(two));
});
