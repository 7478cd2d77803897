import { ExchangeError } from '../errors.ts';
import { decimal } from '../numbers.ts';
import { type Cell, type Table, tableOf } from './table.ts';

function valueText(cell: Cell): string {
  // JSON.stringify would write -0 as 0
  return typeof cell === 'number' ? decimal(cell) : JSON.stringify(cell);
}

/** A table as one JSON object a line, every key in every line; null is not measured. */
export function writeJsonLines({ columns, rows }: Table): string {
  const keys = columns.map(({ key }) => JSON.stringify(key));
  return rows.map((row) => `{${row.map((cell, at) => `${keys[at]}:${valueText(cell)}`).join(',')}}\n`).join('');
}

function objectOf(line: string, file: string, row: number): Readonly<Record<string, unknown>> {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch (cause) {
    throw new ExchangeError(
      'bad-file',
      { file, row, expected: 'an object of JSON', actual: line.slice(0, 40) },
      { cause },
    );
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
  throw new ExchangeError('bad-file', { file, row, expected: 'an object of JSON', actual: line.slice(0, 40) });
}

/**
 * The table that lines of JSON were written from.
 *
 * @throws {@link ExchangeError} `bad-file` with the line that is no object or has other keys; `bad-table` for a cell of another kind
 */
export function readJsonLines(text: string, shape: Omit<Table, 'rows'>, file: string): Table {
  const lines = text.split('\n');
  if (lines.pop() !== '')
    throw new ExchangeError('bad-file', { file, expected: 'a last line that ends', actual: 'none' });
  const expected = shape.columns.map(({ key }) => key);
  const rows = lines.map((line, at) => {
    const object = objectOf(line, file, at + 1);
    const keys = Object.keys(object);
    const missing = expected.find((key) => !keys.includes(key)) ?? keys.find((key) => !expected.includes(key));
    if (missing !== undefined) {
      const actual = keys.includes(missing) ? 'a key of no column' : 'none';
      throw new ExchangeError('bad-file', { file, row: at + 1, column: missing, expected: 'one cell', actual });
    }
    return expected.map((key) => object[key] as Cell);
  });
  return tableOf({ ...shape, rows });
}
