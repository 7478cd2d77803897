import { expect, test } from 'vitest';
import { csvRows } from '../../../packages/exchange/src/tables/csv-rows.ts';

test('the example of RFC 4180: three fields', () => {
  expect(csvRows('a,"b ""q"" c","x\r\ny"\r\n', 'x.csv')).toEqual([['a', 'b "q" c', 'x\r\ny']]);
});

test('empty cells and empty lines are cells', () => {
  expect(csvRows(',\r\n\r\n"",""\r\n', 'x.csv')).toEqual([['', ''], [''], ['', '']]);
  expect(csvRows('', 'x.csv')).toEqual([]);
});

test.each([
  ['a,"b\r\n', 'row 1: expected a closing quote, got the end of the file'],
  ['a\r\nb"c\r\n', 'row 2: expected a comma or CR LF after a cell, got "\\""'],
  ['"a"b\r\n', 'row 1: expected a comma or CR LF after a cell, got "b"'],
  ['a\nb\r\n', 'row 1: expected a comma or CR LF after a cell, got "\\n"'],
  ['a,b', 'row 1: expected a comma or CR LF after a cell, got the end of the file'],
  ['a,', 'row 1: expected a line that ends in CR LF, got the end of the file'],
])('%j is refused with its row', (text, words) => {
  expect(() => csvRows(text, 'x.csv')).toThrow(words);
});
