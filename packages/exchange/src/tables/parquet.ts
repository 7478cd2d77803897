import { parquetWriteBuffer } from 'hyparquet-writer';
import { ExchangeError } from '../errors.ts';
import type { Cell, Table, TableShape } from './table.ts';

/** Types of the format by the kind of a column. */
export const PARQUET_TYPES = { number: 'DOUBLE', text: 'STRING', list: 'STRING', flag: 'BOOLEAN' } as const;

/** Rows in one group: small enough to be read alone, large enough to be packed well. */
const ROWS_OF_GROUP = 100_000;

/** What the file says of itself and its columns, as every reader of the format shows it. */
export function parquetMetadata({ name, title, columns }: TableShape): { key: string; value: string }[] {
  const told = (of: (column: TableShape['columns'][number]) => string): string =>
    JSON.stringify(Object.fromEntries(columns.map((column) => [column.key, of(column)])));
  return [
    { key: 'surae.table', value: name },
    { key: 'surae.title', value: title },
    { key: 'surae.unit_system', value: 'http://unitsofmeasure.org' },
    { key: 'surae.units', value: told(({ kind, unit }) => (kind === 'number' ? unit : '')) },
    { key: 'surae.kinds', value: told(({ kind }) => kind) },
    { key: 'surae.descriptions', value: told(({ description }) => description) },
    { key: 'surae.empty', value: 'null is not measured; zero is zero' },
  ];
}

/**
 * A table as Parquet: numbers as doubles, words as strings, flags as booleans, null where nothing was measured. Units
 * (UCUM codes), kinds and descriptions stand in the key-value metadata of the file.
 *
 * @throws {@link ExchangeError} `bad-table` without a row: what the writer makes of none, other readers refuse
 */
export function writeParquet(table: Table): Uint8Array<ArrayBuffer> {
  const { columns, rows, name } = table;
  if (rows.length === 0) throw new ExchangeError('bad-table', { file: name, expected: 'a row', actual: 'none' });
  const bytes = parquetWriteBuffer({
    columnData: columns.map(({ key, kind }, at) => ({
      name: key,
      data: rows.map((row): Cell => row[at]!),
      type: PARQUET_TYPES[kind],
      nullable: true,
    })),
    rowGroupSize: ROWS_OF_GROUP,
    kvMetadata: parquetMetadata(table),
    createdBy: 'surae',
  });
  return new Uint8Array(bytes);
}
