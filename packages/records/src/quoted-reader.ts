import Papa from 'papaparse';
import type { ReadRows } from './byte-reader.ts';
import { NumberColumns } from './number-columns.ts';
import { RowLines } from './row-lines.ts';
import { quoteError } from './table-header.ts';
import { columnLabel, isBlank, type RowLayout, rowNumbers } from './table-row.ts';
import { decodeLoosely } from './text.ts';

/**
 * The numbers below a header, read with papaparse: slower than the byte reader, and knows quotes. Line ends are made
 * alike first, because papaparse takes one kind for the whole file.
 */
export function readQuotedRows(bytes: Uint8Array, dataStart: number, firstLine: number, layout: RowLayout): ReadRows {
  const text = decodeLoosely(bytes.subarray(dataStart)).replace(/\r\n?/g, '\n');
  const wanted = layout.targets.filter((target) => target >= 0).length;
  const store = new NumberColumns(wanted, 1024);
  const lines = new RowLines();
  let row = 0;
  let counted = 0;
  let lineEnds = 0;
  Papa.parse(text, {
    delimiter: layout.delimiter,
    newline: '\n',
    comments: '#',
    header: false,
    dynamicTyping: false,
    step: ({ data, errors, meta }) => {
      for (; counted < meta.cursor; counted += 1) if (text.charCodeAt(counted) === 10) lineEnds += 1;
      const closed = text.charCodeAt(meta.cursor - 1) === 10 && !isOpenQuote(errors);
      const inside = data.reduce((sum, field) => sum + field.split('\n').length - 1, 0);
      const line = firstLine + lineEnds - (closed ? 1 : 0) - inside;
      const error = errors[0];
      if (error !== undefined) {
        const column = columnLabel(layout.names, data.length - 1);
        const place = { ...(layout.file === undefined ? {} : { file: layout.file }), row: line, column };
        throw quoteError(error.code, place, data[data.length - 1] ?? '');
      }
      if (data.length === 1 && isBlank(data[0]!)) return;
      const numbers = rowNumbers(data, line, !closed, layout);
      if (row === store.capacity) store.grow();
      for (let target = 0; target < wanted; target += 1) store.columns[target]![row] = numbers[target]!;
      lines.add(row, line);
      row += 1;
    },
  });
  return { columns: store.take(row), rowCount: row, lines };
}

function isOpenQuote(errors: readonly { code: string }[]): boolean {
  return errors.some((error) => error.code === 'MissingQuotes');
}
