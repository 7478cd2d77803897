import { NumberColumns } from './number-columns.ts';
import { RowLines } from './row-lines.ts';
import { isBlank, type RowLayout, rowNumbers } from './table-row.ts';
import { decodeLoosely } from './text.ts';

const LF = 10;
const CR = 13;
const TAB = 9;
const SPACE = 32;
const QUOTE = 34;
const HASH = 35;
const PLUS = 43;
const MINUS = 45;
const POINT = 46;
const ZERO = 48;
const UPPER_E = 69;
const LOWER_E = 101;
/** below this every integer is held exactly: 2 to the power of 53 */
const EXACT = 9007199254740992;
/** the powers of ten that are held exactly */
const powers = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));

/** Numbers read from the rows of a table. */
export interface ReadRows {
  readonly columns: readonly Float64Array[];
  readonly rowCount: number;
  readonly lines: RowLines;
}

/** Whole lines of a table. */
export interface LineSpan {
  /** what they stand in */
  readonly bytes: Uint8Array;
  /** the first byte of the first line */
  readonly from: number;
  /** the byte after the last line end */
  readonly to: number;
  /** whether the last line end was put there because the file has none */
  readonly endsOpen: boolean;
}

/**
 * The numbers below a header, read straight from the bytes. Numbers of up to 15 digits with small exponents are
 * computed from their digits, exactly rounded; the others, and every row that is not plain numbers, go through
 * {@link rowNumbers}. Returns `undefined` at the first quotation mark: such a table needs a reader that knows quotes.
 *
 * Source of the exact case: Clinger (1990), How to read floating point numbers accurately, PLDI: a quotient or product
 * of two exactly held numbers is rounded once.
 */
export function readByteRows(
  file: Uint8Array,
  dataStart: number,
  firstLine: number,
  layout: RowLayout,
): ReadRows | undefined {
  const last = file[file.length - 1];
  const endsOpen = dataStart < file.length && last !== LF && last !== CR;
  const bytes = endsOpen ? withLineEnd(file) : file;
  const span = { bytes, from: dataStart, to: bytes.length, endsOpen };
  const store = new NumberColumns(wantedColumns(layout), estimatedRows(span));
  const lines = new RowLines();
  const rowCount = readLines(span, firstLine, layout, store, lines);
  return rowCount === undefined ? undefined : { columns: store.take(rowCount), rowCount, lines };
}

/** Reads whole lines as {@link readByteRows} does, and gives how many rows they hold. */
export function readLines(
  span: LineSpan,
  firstLine: number,
  layout: RowLayout,
  store: NumberColumns,
  lines: RowLines,
): number | undefined {
  const { bytes, to: end, endsOpen } = span;
  const delimiter = layout.delimiter.charCodeAt(0);
  const columnCount = layout.names.length;
  const targets = Int32Array.from(layout.targets);
  const wanted = wantedColumns(layout);
  let columns = store.columns;
  let row = 0;
  let line = firstLine;
  let at = span.from;

  while (at < end) {
    const lineStart = at;
    let byte = bytes[at]!;
    if (row === store.capacity) {
      store.grow();
      columns = store.columns;
    }
    let column = 0;
    let plain = byte !== HASH && byte !== LF && byte !== CR;
    while (plain) {
      const target = targets[column]!;
      if (target < 0) {
        while (byte !== delimiter && byte !== LF && byte !== CR && byte !== QUOTE) byte = bytes[++at]!;
      } else {
        while (byte === SPACE) byte = bytes[++at]!;
        const numberStart = at;
        const negative = byte === MINUS;
        if (negative || byte === PLUS) byte = bytes[++at]!;
        let mantissa = 0;
        let scale = 0;
        const digitsStart = at;
        let digit = byte - ZERO;
        while (digit >= 0 && digit <= 9) {
          mantissa = mantissa * 10 + digit;
          digit = bytes[++at]! - ZERO;
        }
        let digitCount = at - digitsStart;
        if (digit === POINT - ZERO) {
          const fractionStart = ++at;
          digit = bytes[at]! - ZERO;
          while (digit >= 0 && digit <= 9) {
            mantissa = mantissa * 10 + digit;
            digit = bytes[++at]! - ZERO;
          }
          scale = fractionStart - at;
          digitCount -= scale;
        }
        byte = digit + ZERO;
        if (digitCount === 0) break;
        if (byte === LOWER_E || byte === UPPER_E) {
          byte = bytes[++at]!;
          const small = byte === MINUS;
          if (small || byte === PLUS) byte = bytes[++at]!;
          const exponentStart = at;
          let exponent = 0;
          while (byte >= ZERO && byte <= 57) {
            exponent = Math.min(exponent * 10 + byte - ZERO, 9999);
            byte = bytes[++at]!;
          }
          if (at === exponentStart) break;
          scale += small ? -exponent : exponent;
        }
        let value: number;
        if (mantissa < EXACT && scale <= 0 && scale >= -22) {
          value = mantissa / powers[-scale]!;
          if (negative) value = -value;
        } else if (mantissa < EXACT && scale > 0 && scale <= 22) {
          value = mantissa * powers[scale]!;
          if (negative) value = -value;
        } else {
          value = Number(ascii(bytes, numberStart, at));
          if (value === Infinity || value === -Infinity) break;
        }
        columns[target]![row] = value;
        while (byte === SPACE || (byte === TAB && delimiter !== TAB)) byte = bytes[++at]!;
      }
      if (byte === delimiter) {
        column += 1;
        if (column === columnCount) break;
        byte = bytes[++at]!;
      } else if ((byte === LF || byte === CR) && column === columnCount - 1) {
        column = columnCount;
        plain = false;
      } else break;
    }

    if (column === columnCount && !plain) {
      lines.add(row, line);
      row += 1;
    } else {
      at = lineStart;
      for (byte = bytes[at]!; byte !== LF && byte !== CR; byte = bytes[++at]!) {
        if (byte === QUOTE && bytes[lineStart] !== HASH) return undefined;
      }
      if (bytes[lineStart] !== HASH && at > lineStart) {
        const text = decodeLoosely(bytes.subarray(lineStart, at));
        const fields = text.split(layout.delimiter);
        if (fields.length > 1 || !isBlank(text)) {
          const numbers = rowNumbers(fields, line, endsOpen && at === end - 1, layout);
          for (let target = 0; target < wanted; target += 1) columns[target]![row] = numbers[target]!;
          lines.add(row, line);
          row += 1;
        }
      }
    }
    at += bytes[at] === CR && bytes[at + 1] === LF ? 2 : 1;
    line += 1;
  }
  return row;
}

/** How many columns of a table become numbers. */
export function wantedColumns({ targets }: RowLayout): number {
  return targets.filter((target) => target >= 0).length;
}

function withLineEnd(file: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(file.length + 1);
  bytes.set(file);
  bytes[file.length] = LF;
  return bytes;
}

/** A little more rows than the first line suggests. */
function estimatedRows({ bytes, from, to }: LineSpan): number {
  let end = from;
  while (end < to && bytes[end] !== LF && bytes[end] !== CR) end += 1;
  const lineLength = Math.max(4, end + 1 - from);
  return Math.ceil((1.1 * (to - from)) / lineLength);
}

function ascii(bytes: Uint8Array, from: number, to: number): string {
  let text = '';
  for (let at = from; at < to; at += 1) text += String.fromCharCode(bytes[at]!);
  return text;
}
