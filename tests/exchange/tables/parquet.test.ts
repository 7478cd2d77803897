import { type Cell, SAMPLE_SHAPE, sampleTable, type Table, tableOf, writeParquet } from '@surae/exchange';
import { tableFromIPC } from 'apache-arrow';
import fc from 'fast-check';
import { parquetMetadata, parquetReadObjects } from 'hyparquet';
import { readParquet } from 'parquet-wasm';
import { expect, test } from 'vitest';
import { arbitraryTable } from '../../support/arbitrary-tables.ts';
import { runs } from '../../support/runs.ts';

// two readers that share no code with each other: hyparquet (JavaScript) and the Rust implementation of Apache Arrow
function readByArrow(bytes: Uint8Array): {
  names: string[];
  types: string[];
  rows: Cell[][];
  metadata: Map<string, string>;
} {
  const table = tableFromIPC(readParquet(bytes).intoIPCStream());
  const names = table.schema.fields.map(({ name }) => name);
  const columns = names.map((_, at) => table.getChildAt(at)!);
  const rows = Array.from({ length: table.numRows }, (_, row) => columns.map((column) => column.get(row) as Cell));
  const types = table.schema.fields.map(({ type }) => String(type));
  return { names, types, rows, metadata: table.schema.metadata };
}

function withoutMark(cell: Cell): Cell {
  return typeof cell === 'string' ? cell.replace(/^\uFEFF/, '') : cell;
}

const TYPES = { number: 'Float64', text: 'Utf8', list: 'Utf8', flag: 'Bool' } as const;

function same(table: Table, bytes: Uint8Array): void {
  const { names, types, rows, metadata } = readByArrow(bytes);
  expect(names).toEqual(table.columns.map(({ key }) => key));
  expect(types).toEqual(table.columns.map(({ kind }) => TYPES[kind]));
  // the text decoder of this reader drops a byte order mark at the beginning of a text; it stands in the file
  expect(rows).toEqual(table.rows.map((row) => row.map(withoutMark)));
  const units = JSON.parse(metadata.get('surae.units') ?? '{}') as Record<string, string>;
  for (const { key, kind, unit } of table.columns) expect(units[key]).toBe(kind === 'number' ? unit : '');
}

test('an independent reader finds equal values, nulls, types and units', () => {
  fc.assert(
    fc.property(
      arbitraryTable.filter(({ rows }) => rows.length > 0),
      (table) => same(table, writeParquet(table)),
    ),
    runs(60, 3000),
  );
});

test('a second reader finds the same, over several groups of rows', async () => {
  const times = Float64Array.from({ length: 100_500 }, (_, i) => i / 1000);
  const force = times.map((timeS) => (timeS % 1 < 0.01 ? Number.NaN : Math.sin(timeS)));
  const channels = [{ quantity: 'force', axis: null, samples: force }] as const;
  const table = sampleTable('T1', { groups: [{ timesS: times, channels }] });
  const bytes = writeParquet(table);
  const { row_groups: groups, key_value_metadata: told } = parquetMetadata(bytes.buffer);
  expect(groups.map(({ num_rows: rows }) => Number(rows))).toEqual([100_000, 500]);
  expect(told?.find(({ key }) => key === 'surae.units')?.value).toContain('"force_n":"N"');
  const rows = await parquetReadObjects({ file: bytes.buffer });
  expect(rows).toHaveLength(table.rows.length);
  const wrong = rows.filter((row, at) => row['time_s'] !== table.rows[at][2] || row['force_n'] !== table.rows[at][3]);
  expect(wrong).toEqual([]);
  expect(rows[0]).toMatchObject({ trial: 'T1', clock: 1, time_s: 0, force_n: null, torque_nm: null });
});

test('the same table gives the same bytes, and one without rows is refused', () => {
  const table = tableOf({ ...SAMPLE_SHAPE, rows: [] });
  expect(() => writeParquet(table)).toThrow('samples: expected a row, got none');
  const one = sampleTable('T1', { groups: [{ timesS: Float64Array.of(0), channels: [] }] });
  expect(writeParquet(one)).toEqual(writeParquet(one));
});
