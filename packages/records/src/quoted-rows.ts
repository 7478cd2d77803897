import Papa from 'papaparse';
import { quoteError } from './table-header.ts';
import { columnLabel } from './table-row.ts';

/** The lines below a header that papaparse divides, and where they stand in the file. */
export interface QuotedRows {
  readonly file: string | undefined;
  readonly delimiter: string;
  readonly names: readonly string[];
  /** text below the header, with LF as its only line end: papaparse takes one kind for the whole file */
  readonly text: string;
  /** line of the file on which the text starts, counted from 1 */
  readonly firstLine: number;
}

/**
 * Calls `visit` with the fields of every row, the line on which it starts, and whether a line end closes it. Comments
 * are left out; a blank line comes as one empty field.
 *
 * @throws {@link RecordError} `unclosed-quote`, `malformed-quote`
 */
export function visitQuotedRows(
  rows: QuotedRows,
  visit: (fields: readonly string[], line: number, closed: boolean) => void,
): void {
  const { text } = rows;
  let counted = 0;
  let lineEnds = 0;
  Papa.parse(text, {
    delimiter: rows.delimiter,
    newline: '\n',
    comments: '#',
    header: false,
    dynamicTyping: false,
    step: ({ data, errors, meta }) => {
      for (; counted < meta.cursor; counted += 1) if (text.charCodeAt(counted) === 10) lineEnds += 1;
      const openQuote = errors.some((error) => error.code === 'MissingQuotes');
      const closed = text.charCodeAt(meta.cursor - 1) === 10 && !openQuote;
      const inside = data.reduce((sum, field) => sum + field.split('\n').length - 1, 0);
      const line = rows.firstLine + lineEnds - (closed ? 1 : 0) - inside;
      const error = errors[0];
      if (error !== undefined) {
        const column = columnLabel(rows.names, data.length - 1);
        const place = { ...(rows.file === undefined ? {} : { file: rows.file }), row: line, column };
        throw quoteError(error.code, place, data[data.length - 1] ?? '');
      }
      visit(data, line, closed);
    },
  });
}
