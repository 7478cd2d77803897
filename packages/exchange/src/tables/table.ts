import { ExchangeError } from '../errors.ts';

/** A value as it leaves: null where nothing was measured, several words in one text parted by semicolons. */
export type Cell = number | string | boolean | null;

/** A column as every format tells of it. The columns of the shared data are such. */
export interface TableColumn {
  readonly key: string;
  /** UCUM code; '1' for numbers without a dimension and for words */
  readonly unit: string;
  readonly kind: 'number' | 'text' | 'flag' | 'list';
  readonly description: string;
  /** who says what the column is */
  readonly source: string;
}

/** Rows under columns, in an order that does not hang on anything but the data. */
export interface Table {
  /** of its files, without their ending */
  readonly name: string;
  readonly title: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A table without its rows, as far as a file of them tells of it. */
export interface TableShape {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Omit<TableColumn, 'source'>[];
}

const TYPES = { number: 'number', text: 'string', list: 'string', flag: 'boolean' } as const;

/** Empty words and numbers that are none are not measured: no format can tell them from it. */
function plainCell(cell: Cell): Cell {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : null;
  return cell === '' ? null : cell;
}

/**
 * A table that every format can hold alike.
 *
 * @throws {@link ExchangeError} `bad-table` when columns repeat, a row has another length or a cell another kind
 */
export function tableOf({ name, title, columns, rows }: Table): Table {
  const file = name;
  const keys = new Set<string>();
  for (const { key } of columns) {
    if (keys.has(key)) throw new ExchangeError('bad-table', { file, column: key, expected: 'one', actual: 'two' });
    keys.add(key);
  }
  const plain = rows.map((row, at) => {
    if (row.length !== columns.length) {
      const expected = `${columns.length} cells`;
      throw new ExchangeError('bad-table', { file, row: at + 1, expected, actual: `${row.length}` });
    }
    return row.map((cell, place) => {
      const { key, kind } = columns[place]!;
      if (cell !== null && typeof cell !== TYPES[kind]) {
        const place_ = { file, row: at + 1, column: key };
        throw new ExchangeError('bad-table', { ...place_, expected: TYPES[kind], actual: typeof cell });
      }
      return plainCell(cell);
    });
  });
  return { name, title, columns, rows: plain };
}
