import { type Cell, ParquetRows, writeParquet } from '@surae/exchange';
import fc from 'fast-check';
import { parquetMetadata, parquetReadObjects } from 'hyparquet';
import { expect, test } from 'vitest';

const SHAPE = {
  name: 'made',
  title: 'made rows',
  columns: [
    { key: 'height_mm', unit: 'mm', kind: 'number', description: 'a height', source: 'definition' },
    { key: 'side', unit: '1', kind: 'text', description: 'a leg', source: 'definition' },
    { key: 'valid', unit: '1', kind: 'flag', description: 'met all', source: 'definition' },
  ],
} as const;

function written(rows: readonly (readonly Cell[])[], cuts: readonly number[] = []): Uint8Array<ArrayBuffer> {
  const pieces: Uint8Array[] = [];
  const parquet = new ParquetRows(SHAPE, (piece) => pieces.push(new Uint8Array(piece)));
  let at = 0;
  for (const cut of [...cuts, rows.length]) {
    parquet.add(rows.slice(at, at + cut));
    at += cut;
  }
  parquet.end();
  expect(parquet.count).toBe(rows.length);
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  pieces.reduce((from, piece) => (bytes.set(piece, from), from + piece.length), 0);
  return bytes;
}

const row = (at: number): Cell[] => [
  at % 7 === 0 ? null : at / 8,
  at % 5 === 0 ? null : at % 2 === 0 ? 'left' : 'rechts µ',
  at % 3 === 0 ? null : at % 2 === 0,
];

test('over several groups it holds the rows and the metadata that the table written at once holds', async () => {
  const rows = Array.from({ length: 12_345 }, (_, at) => row(at));
  const streamed = written(rows);
  const atOnce = writeParquet({ ...SHAPE, rows });
  const [ours, theirs] = [streamed, atOnce].map(({ buffer }) => parquetMetadata(buffer));
  expect(ours.key_value_metadata).toEqual(theirs.key_value_metadata);
  expect(ours.schema).toEqual(theirs.schema);
  expect(ours.row_groups.map((group) => Number(group.num_rows))).toEqual([5000, 5000, 2345]);
  expect(await parquetReadObjects({ file: streamed.buffer })).toEqual(
    await parquetReadObjects({ file: atOnce.buffer }),
  );
});

test('the bytes do not hang on how many rows come at a time', () => {
  const rows = Array.from({ length: 5_100 }, (_, at) => row(at));
  const whole = Buffer.from(written(rows));
  fc.assert(
    fc.property(fc.array(fc.nat(3000), { maxLength: 6 }), (cuts) => {
      expect(whole.equals(Buffer.from(written(rows, cuts)))).toBe(true);
    }),
    { numRuns: 10 },
  );
});

test('a table without a row is refused', () => {
  expect(() => written([])).toThrow('expected a row');
});
