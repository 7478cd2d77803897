import type { ReadRows } from './byte-reader.ts';
import { NumberColumns } from './number-columns.ts';
import { visitQuotedRows } from './quoted-rows.ts';
import { RowLines } from './row-lines.ts';
import { isBlank, type RowLayout, rowNumbers } from './table-row.ts';
import { decodeLoosely } from './text.ts';

/** The numbers below a header, read with papaparse: slower than the byte reader, and knows quotes. */
export function readQuotedRows(bytes: Uint8Array, dataStart: number, firstLine: number, layout: RowLayout): ReadRows {
  const text = decodeLoosely(bytes.subarray(dataStart)).replace(/\r\n?/g, '\n');
  const wanted = layout.targets.filter((target) => target >= 0).length;
  const store = new NumberColumns(wanted, 1024);
  const lines = new RowLines();
  let row = 0;
  visitQuotedRows({ ...layout, text, firstLine }, (fields, line, closed) => {
    if (fields.length === 1 && isBlank(fields[0]!)) return;
    const numbers = rowNumbers(fields, line, !closed, layout);
    if (row === store.capacity) store.grow();
    for (let target = 0; target < wanted; target += 1) store.columns[target]![row] = numbers[target]!;
    lines.add(row, line);
    row += 1;
  });
  return { columns: store.take(row), rowCount: row, lines };
}
