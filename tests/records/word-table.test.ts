import { expect, test } from 'vitest';
import { RecordError } from '../../packages/records/src/errors.ts';
import { readWordTable } from '../../packages/records/src/word-table.ts';

const read = (text: string, needed = ['item', 'count']): ReturnType<typeof readWordTable> =>
  readWordTable(new TextEncoder().encode(text), needed, 'counts.csv');

const refusal = (text: string): string => {
  try {
    read(text);
  } catch (error) {
    if (error instanceof RecordError) return error.message;
    throw error;
  }
  return 'none';
};

test('rows are read as somebody may have saved them: any delimiter, line ends and order of columns', () => {
  const rows = [
    { line: 2, cells: { item: 'item-001', count: '12' } },
    { line: 3, cells: { item: 'item-002', count: '' } },
  ];
  expect(read('item,count\r\nitem-001,12\r\nitem-002,\r\n')).toEqual(rows);
  expect(read('item;count\nitem-001; 12 \nitem-002;\n\n')).toEqual(rows);
  expect(read('count\titem\n12\titem-001\n\titem-002\n')).toEqual(rows);
});

test('what a spreadsheet would run is a plain word again', () => {
  expect(read("item,count\n'=1+1,3\n")[0].cells['item']).toBe('=1+1');
});

test('a column that is missing and a row of another length are told with their line', () => {
  expect(refusal('item,number\na,1\n')).toBe(
    'counts.csv, row 1: expected a column "count", got the columns "item", "number"',
  );
  expect(refusal('item,count\na,1\nb\n')).toBe('counts.csv, row 3: expected 2 fields as in the header, got 1');
});
