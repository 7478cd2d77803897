import Papa from 'papaparse';
import { quoted, RecordError } from './errors.ts';
import { unguardedNote } from './guarded-text.ts';
import { parseNumber } from './number.ts';
import { columnLabel } from './table-row.ts';
import { countLineEnds, decodeLoosely, decodeUtf8, textBytes } from './text.ts';

/** The first meaningful line of a table and how its lines are divided. */
export interface TableHeader {
  /** the file without its byte order mark */
  readonly bytes: Uint8Array;
  readonly delimiter: Delimiter;
  /** names of the columns as spelled, without blanks around them */
  readonly names: readonly string[];
  /** line of the names, counted from 1 */
  readonly line: number;
  /** comment lines above the names, without their mark */
  readonly notes: readonly string[];
  /** offset of the first byte below the names */
  readonly dataStart: number;
}

export type Delimiter = ',' | ';' | '\t';

const LF = 10;
const CR = 13;

/**
 * The header of a table in UTF-8 text: blank lines and lines that begin with `#` are passed over, the next line names
 * the columns, and the delimiter is the one of tab, semicolon and comma that it holds most often.
 *
 * @throws {@link RecordError} `empty-file`, `binary-file`, `utf-16`, `not-utf-8`, `nul-bytes`, `unclosed-quote`,
 * `malformed-quote`, `no-header`, `duplicate-column`
 */
export function readTableHeader(raw: Uint8Array, file?: string): TableHeader {
  const at = file === undefined ? {} : { file };
  const bytes = textBytes(raw, file);
  const nul = bytes.indexOf(0);
  const notes: string[] = [];
  let row = 0;
  for (let start = 0; start < bytes.length; ) {
    let end = start;
    while (end < bytes.length && bytes[end] !== LF && bytes[end] !== CR) end += 1;
    const next = bytes[end] === CR && bytes[end + 1] === LF ? end + 2 : end + 1;
    row += 1;
    if (nul >= 0 && nul < end) throw nulByte({ ...at, row }, nul);
    const text = decodeUtf8(bytes.subarray(start, end), { ...at, row });
    start = next;
    if (text.trim() === '') continue;
    if (text.startsWith('#')) {
      notes.push(unguardedNote(text.slice(1).trim()));
      continue;
    }
    const delimiter = findDelimiter(text);
    const names = splitHeader(text, delimiter, { ...at, row });
    if (names.every((name) => typeof parseNumber(name) === 'number')) {
      const expected = 'a line that names the columns, such as "time [s],force [N]"';
      throw new RecordError('no-header', { ...at, row, expected, actual: `numbers, ${quoted(text)}` });
    }
    refuseRepeatedNames(names, { ...at, row });
    if (nul >= 0) {
      const lineStart = Math.max(bytes.lastIndexOf(LF, nul), bytes.lastIndexOf(CR, nul)) + 1;
      const columnIndex = decodeLoosely(bytes.subarray(lineStart, nul)).split(delimiter).length - 1;
      const place = { ...at, row: countLineEnds(bytes, nul) + 1, column: columnLabel(names, columnIndex) };
      throw nulByte(place, nul);
    }
    return { bytes, delimiter, names, line: row, notes, dataStart: Math.min(next, bytes.length) };
  }
  const actual = bytes.length === 0 ? 'an empty file' : 'only blank and comment lines';
  throw new RecordError('empty-file', { ...at, expected: 'a header line and rows of numbers', actual });
}

function nulByte(place: { file?: string; row: number; column?: string }, offset: number): RecordError {
  const actual = `a NUL byte at byte ${offset + 1}`;
  return new RecordError('nul-bytes', { ...place, expected: 'text in UTF-8', actual });
}

function findDelimiter(text: string): Delimiter {
  const plain = text.replace(/"[^"]*"/g, '');
  let best: Delimiter = ',';
  let most = 0;
  // A comma can stand inside a name, a semicolon hardly, a tab never: on equal counts the rarer one divides.
  for (const delimiter of ['\t', ';', ','] as const) {
    const count = plain.split(delimiter).length - 1;
    if (count > most) {
      most = count;
      best = delimiter;
    }
  }
  return best;
}

function splitHeader(text: string, delimiter: Delimiter, place: { file?: string; row: number }): string[] {
  if (!text.includes('"')) return text.split(delimiter).map((name) => name.trim());
  let names: string[] = [];
  Papa.parse(text, {
    delimiter,
    newline: '\n',
    comments: '#',
    header: false,
    dynamicTyping: false,
    step: ({ data, errors }) => {
      const error = errors[0];
      if (error !== undefined) throw quoteError(error.code, place, text);
      names = data;
    },
  });
  return names.map((name) => name.trim());
}

/** The refusal for a quoted field that papaparse could not end. */
export function quoteError(
  papaCode: string,
  place: { file?: string; row: number; column?: string },
  text: string,
): RecordError {
  const open = papaCode === 'MissingQuotes';
  return new RecordError(open ? 'unclosed-quote' : 'malformed-quote', {
    ...place,
    expected: open ? 'a closing quotation mark' : 'a delimiter after the closing quotation mark',
    actual: open ? `the end of the file inside ${quoted(text)}` : quoted(text),
  });
}

/** A name without what may differ in spelling: case, blanks, and `_`, `-` or a blank between words. */
export function plainName(name: string): string {
  return name
    .toLowerCase()
    .trim()
    .replace(/\s*([[\]()])\s*/g, '$1')
    .replace(/[\s-]+/g, '_');
}

function refuseRepeatedNames(names: readonly string[], place: { file?: string; row: number }): void {
  const seen = new Map<string, string>();
  for (const name of names) {
    const plain = plainName(name);
    const earlier = seen.get(plain);
    if (plain !== '' && earlier !== undefined) {
      throw new RecordError('duplicate-column', {
        ...place,
        column: name,
        expected: 'one column of each name',
        actual: earlier === name ? `two named ${quoted(name)}` : `${quoted(earlier)} and ${quoted(name)}`,
      });
    }
    seen.set(plain, name);
  }
}
