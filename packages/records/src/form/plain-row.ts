import type { FieldKind } from './row-form.ts';

const TAB = 9;
const SPACE = 32;
const QUOTE = 34;
const PLUS = 43;
const MINUS = 45;
const ZERO = 48;
const UPPER_E = 69;
const LOWER_E = 101;
/** below this every integer is held exactly: 2 to the power of 53 */
const EXACT = 9007199254740992;
/** the powers of ten that are held exactly */
const powers = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));

/** How the bytes of a row are divided. */
export interface PlainForm {
  readonly delimiter: number;
  readonly decimal: number;
  readonly kinds: readonly FieldKind[];
}

/**
 * Reads a row of plain numbers straight from its bytes into `row`. Whatever is not plain (a quotation mark, a text, a
 * missing value, a number with more digits than a double holds) makes it answer false: such a row is read as text.
 *
 * Source of the exact case: Clinger (1990), How to read floating point numbers accurately, PLDI: a quotient or product
 * of two exactly held numbers is rounded once.
 */
export function readPlainRow(
  bytes: Uint8Array,
  start: number,
  end: number,
  { delimiter, decimal, kinds }: PlainForm,
  row: Float64Array,
): boolean {
  let at = start;
  const last = kinds.length - 1;
  for (let column = 0; column <= last; column += 1) {
    const kind = kinds[column]!;
    if (kind === 'passed-over') {
      for (; at < end && bytes[at] !== delimiter; at += 1) if (bytes[at] === QUOTE) return false;
    } else if (kind === 'number') {
      while (at < end && bytes[at] === SPACE) at += 1;
      let byte = bytes[at]!;
      const negative = byte === MINUS;
      if (negative || byte === PLUS) at += 1;
      let mantissa = 0;
      let scale = 0;
      const digitsStart = at;
      while (at < end && (byte = bytes[at]! - ZERO) >= 0 && byte <= 9) {
        mantissa = mantissa * 10 + byte;
        at += 1;
      }
      let digitCount = at - digitsStart;
      if (at < end && bytes[at] === decimal) {
        const fractionStart = (at += 1);
        while (at < end && (byte = bytes[at]! - ZERO) >= 0 && byte <= 9) {
          mantissa = mantissa * 10 + byte;
          at += 1;
        }
        scale = fractionStart - at;
        digitCount -= scale;
      }
      if (digitCount === 0) return false;
      if (at < end && (bytes[at] === LOWER_E || bytes[at] === UPPER_E)) {
        at += 1;
        const small = bytes[at] === MINUS;
        if (small || bytes[at] === PLUS) at += 1;
        const exponentStart = at;
        let exponent = 0;
        while (at < end && (byte = bytes[at]! - ZERO) >= 0 && byte <= 9 && exponent < 1000) {
          exponent = exponent * 10 + byte;
          at += 1;
        }
        if (at === exponentStart) return false;
        scale += small ? -exponent : exponent;
      }
      while (at < end && (bytes[at] === SPACE || (bytes[at] === TAB && delimiter !== TAB))) at += 1;
      if (mantissa >= EXACT || scale < -22 || scale > 22) return false;
      const value = scale <= 0 ? mantissa / powers[-scale]! : mantissa * powers[scale]!;
      row[column] = negative ? -value : value;
    } else return false;
    if (column < last) {
      if (at >= end || bytes[at] !== delimiter) return false;
      at += 1;
    }
  }
  return at === end;
}
