import {
  type Cell,
  csvwMetadata,
  readCsvTable,
  readCsvwMetadata,
  type Table,
  tableOf,
  writeCsvTable,
} from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryTable } from '../../support/arbitrary-tables.ts';
import { runs } from '../../support/runs.ts';

const columns = [
  { key: 'who', unit: '1', kind: 'text', description: 'a name', source: 'definition' },
  { key: 'height_mm', unit: 'mm', kind: 'number', description: 'a height', source: 'definition' },
  { key: 'sharp', unit: '1', kind: 'flag', description: 'a flag', source: 'definition' },
] as const;

const tableWith = (...rows: Cell[][]): Table => tableOf({ name: 'people', title: 'People', columns, rows });

test('RFC 4180: CR LF, quotes where needed; empty is not measured and zero is zero', () => {
  const text = writeCsvTable(tableWith(['b "q" c', 0, false], ['x\r\ny', null, null], ['a,b', -0, true]));
  expect(text).toBe('who,height_mm,sharp\r\n"b ""q"" c",0,false\r\n"x\r\ny",,\r\n"a,b",-0,true\r\n');
});

test('a text that a spreadsheet would run is kept from it; a number is none', () => {
  const text = writeCsvTable(tableWith(['=1+1', -5, null], ['@x', 1, null], ['\tx', 1, null], ["'=1", 1, null]));
  expect(text).toBe("who,height_mm,sharp\r\n'=1+1,-5,\r\n'@x,1,\r\n'\tx,1,\r\n''=1,1,\r\n");
});

test('what is no number is not written, and an empty word is none', () => {
  expect(writeCsvTable(tableWith(['', Number.NaN, null], ['x', Number.POSITIVE_INFINITY, null]))).toBe(
    'who,height_mm,sharp\r\n,,\r\nx,,\r\n',
  );
});

test('written, read by its metadata and written again, every table has the same bytes', () => {
  fc.assert(
    fc.property(arbitraryTable, (table) => {
      const text = writeCsvTable(table);
      const metadata = csvwMetadata(table, ['things.csv']);
      const { shape, urls } = readCsvwMetadata(metadata, 'things-metadata.json');
      const again = readCsvTable(text, shape, 'things.csv');
      expect(again).toEqual(table);
      expect(writeCsvTable(again)).toBe(text);
      expect(csvwMetadata(again, urls)).toBe(metadata);
    }),
    runs(200, 20_000),
  );
});
