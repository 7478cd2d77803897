import { unguarded } from '@surae/records';
import { ExchangeError } from '../errors.ts';
import { csvRows } from './csv-rows.ts';
import { type Cell, type Table, type TableShape, tableOf } from './table.ts';

const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/;

function cellOf(
  text: string,
  { kind, key }: TableShape['columns'][number],
  place: { file: string; row: number },
): Cell {
  if (text === '') return null;
  const wrong = (expected: string): ExchangeError =>
    new ExchangeError('bad-file', { ...place, column: key, expected, actual: JSON.stringify(text) });
  switch (kind) {
    case 'number':
      if (!NUMBER.test(text)) throw wrong('a number, or nothing');
      return Number(text);
    case 'flag':
      if (text !== 'true' && text !== 'false') throw wrong('true, false, or nothing');
      return text === 'true';
    case 'text':
    case 'list':
      return unguarded(text);
  }
}

function cellsOfRow(row: readonly string[], { columns }: TableShape, place: { file: string; row: number }): Cell[] {
  if (row.length !== columns.length) {
    const expected = `${columns.length} cells`;
    throw new ExchangeError('bad-file', { ...place, expected, actual: `${row.length}` });
  }
  return row.map((text, column) => cellOf(text, columns[column]!, place));
}

/**
 * The cells of lines without a header, as `csvLines` writes them; an empty one is null.
 *
 * @throws {@link ExchangeError} `bad-file` with row and column where the lines are not of that shape
 */
export function cellsOfLines(lines: string, shape: TableShape, file: string): Cell[][] {
  return csvRows(lines, file).map((row, at) => cellsOfRow(row, shape, { file, row: at + 1 }));
}

/**
 * The table that comma-separated text was written from.
 *
 * @param shape - name, title and columns, as the metadata beside the file tell them
 * @throws {@link ExchangeError} `bad-file` with row and column where the text is not of that shape
 */
export function readCsvTable(text: string, shape: Omit<Table, 'rows'>, file: string): Table {
  const [header, ...rows] = csvRows(text, file);
  const expected = shape.columns.map(({ key }) => key).join();
  const actual = header?.map(unguarded).join() ?? 'nothing';
  if (actual !== expected) throw new ExchangeError('bad-file', { file, row: 1, expected, actual });
  const cells = rows.map((row, at) => cellsOfRow(row, shape, { file, row: at + 2 }));
  return tableOf({ ...shape, rows: cells });
}
