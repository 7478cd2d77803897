import { quoted, RecordError } from '../errors.ts';
import { RowLines } from '../row-lines.ts';
import { clockReading } from './clock.ts';
import { ColumnBlocks } from './column-blocks.ts';
import { ChunkDecoder, decodeText } from './encoding.ts';
import { namesBelow } from './group-names.ts';
import { numberIn } from './number-form.ts';
import { type PlainForm, readPlainRow } from './plain-row.ts';
import type { RowForm, RowWatcher } from './row-form.ts';
import { splitFields } from './split-fields.ts';

const LF = 10;
const CR = 13;
const HASH = 35;
/** Longest line that is held while its end has not come [bytes]; ours: no row of a recording is longer. */
const LONGEST_LINE = 1_000_000;
/** Different words of a column that are kept; ours: a column with more is no code of a person or a side. */
const MOST_WORDS = 500;

/** Reads the rows of a table chunk by chunk; besides one chunk it holds the numbers alone. */
export class RowReader {
  readonly lines = new RowLines();
  /** what each code in a column of words stands for */
  readonly words: readonly (readonly string[])[];
  readonly #form: RowForm;
  readonly #watcher: RowWatcher;
  readonly #file: string | undefined;
  readonly #decoder: ChunkDecoder;
  readonly #plain: PlainForm | undefined;
  readonly #blocks: ColumnBlocks;
  readonly #row: Float64Array;
  /** rows above the first one, which may stand again between rows */
  readonly #headRows: readonly (readonly string[] | null)[];
  readonly #codes: readonly Map<string, number>[];
  #carry: Uint8Array = new Uint8Array(0);
  #line = 0;

  constructor(form: RowForm, watcher: RowWatcher, file?: string) {
    this.#form = form;
    this.#watcher = watcher;
    this.#file = file;
    this.#decoder = new ChunkDecoder(form.encoding, file);
    this.#plain =
      form.delimiter === ' ' || form.kinds.some((kind) => kind !== 'number' && kind !== 'passed-over')
        ? undefined
        : { delimiter: form.delimiter.charCodeAt(0), decimal: form.decimal.charCodeAt(0), kinds: form.kinds };
    const { names, groupRow, unitRow } = form;
    const below = groupRow === null || names === null ? names : (namesBelow(groupRow, names) ?? names);
    this.#headRows = [groupRow, below, unitRow];
    this.#blocks = new ColumnBlocks(form.kinds.length);
    this.#row = new Float64Array(form.kinds.length);
    this.#codes = form.kinds.map(() => new Map<string, number>());
    this.words = form.kinds.map(() => []);
  }

  get rowCount(): number {
    return this.#blocks.rowCount;
  }

  push(chunk: Uint8Array): void {
    this.#read(this.#decoder.push(chunk));
  }

  /** Says that no chunk follows: what has no line end is the last line. */
  end(): void {
    this.#read(this.#decoder.end());
    const rest = this.#carry;
    this.#carry = new Uint8Array(0);
    if (rest.length === 0) return;
    this.#line += 1;
    // a lone CR was held back, since a LF might have followed
    if (rest[rest.length - 1] === CR) this.#take(rest, 0, rest.length - 1, true);
    else this.#take(rest, 0, rest.length, false);
  }

  /** The numbers of one column, NaN where a value is missing; they are handed over once. */
  take(columnIndex: number): Float64Array {
    return this.#blocks.take(columnIndex);
  }

  #read(chunk: Uint8Array): void {
    let bytes = chunk;
    if (this.#carry.length > 0) {
      bytes = new Uint8Array(this.#carry.length + chunk.length);
      bytes.set(this.#carry);
      bytes.set(chunk, this.#carry.length);
    }
    let start = 0;
    for (let at = 0; at < bytes.length; at += 1) {
      const byte = bytes[at]!;
      if (byte !== LF && byte !== CR) continue;
      if (byte === CR && at + 1 === bytes.length) break;
      const next = byte === CR && bytes[at + 1] === LF ? at + 2 : at + 1;
      this.#line += 1;
      this.#take(bytes, start, at, true);
      start = next;
      at = next - 1;
    }
    this.#carry = bytes.slice(start);
    if (this.#carry.length > LONGEST_LINE) {
      throw new RecordError('line-too-long', {
        ...this.#place(this.#line + 1),
        expected: `a line end within ${LONGEST_LINE / 1e6} million bytes`,
        actual: 'none',
      });
    }
  }

  #place(row: number): { file?: string; row: number } {
    return this.#file === undefined ? { row } : { file: this.#file, row };
  }

  #take(bytes: Uint8Array, start: number, end: number, closed: boolean): void {
    const line = this.#line;
    if (line < this.#form.dataLine) return;
    if (closed && this.#plain !== undefined && bytes[start] !== HASH) {
      if (readPlainRow(bytes, start, end, this.#plain, this.#row)) {
        this.#add(line);
        return;
      }
    }
    const piece = bytes.subarray(start, end);
    const text = decodeText(piece, this.#decoder.out);
    if (text === undefined) {
      const actual = `bytes that are not UTF-8 in ${quoted(new TextDecoder('utf-8').decode(piece))}`;
      throw new RecordError('not-utf-8', { ...this.#place(line), expected: 'text in UTF-8', actual });
    }
    if (text.includes('\0')) {
      const expected = 'text without NUL bytes';
      throw new RecordError('nul-bytes', { ...this.#place(line), expected, actual: 'a NUL byte' });
    }
    this.#takeText(text, line, closed);
  }

  #takeText(text: string, line: number, closed: boolean): void {
    const { delimiter, kinds } = this.#form;
    const watcher = this.#watcher;
    if (text.trim() === '') return watcher.blank(line);
    if (text.startsWith('#')) return watcher.remark(line, text.slice(1).trim());
    let fields = splitFields(text, delimiter);
    if (fields?.every((field) => field.trim() === '') === true) return watcher.blank(line);
    if (fields?.length === kinds.length + 1 && fields[kinds.length]!.trim() === '') fields = fields.slice(0, -1);
    if (!closed && !watcher.openEnd(line, text, fields)) return;
    const row = fields;
    if (row !== undefined && this.#headRows.some((head) => sameFields(row, head))) return watcher.repeated(line);
    if (fields === undefined || fields.length !== kinds.length) return watcher.noRow(line, text, fields);
    // a word where the first number belongs: a line of text that has as many fields by chance
    const place = kinds.findIndex((kind) => kind !== 'word' && kind !== 'passed-over');
    const lead = fields[place]?.trim() ?? '';
    if (/^[\p{L}=*-]/u.test(lead) && !this.#form.missing.has(lead.toLowerCase()) && !/^-[\d.,]/.test(lead)) {
      return watcher.noRow(line, text, fields);
    }
    for (let column = 0; column < kinds.length; column += 1) {
      if (!this.#readField(fields[column]!, column, line)) return;
    }
    this.#add(line);
  }

  /** Whether the row can be kept as far as this field goes. */
  #readField(field: string, column: number, line: number): boolean {
    const kind = this.#form.kinds[column]!;
    if (kind === 'passed-over') {
      this.#row[column] = Number.NaN;
      return true;
    }
    if (kind === 'word') {
      this.#row[column] = this.#codeOf(field.trim(), column);
      return true;
    }
    let value: number | undefined;
    if (kind === 'number') value = numberIn(field, this.#form);
    else {
      const reading = clockReading(field, this.#form.dates);
      value = reading?.kind === kind ? reading.seconds : undefined;
    }
    if (value !== undefined) {
      this.#row[column] = value;
      return true;
    }
    if (this.#form.missing.has(field.trim().toLowerCase())) {
      this.#watcher.missing(line, column, field.trim());
      this.#row[column] = Number.NaN;
      return true;
    }
    this.#watcher.unreadable(line, column, field.trim());
    return false;
  }

  #codeOf(word: string, column: number): number {
    const codes = this.#codes[column]!;
    const known = codes.get(word);
    if (known !== undefined) return known;
    if (codes.size >= MOST_WORDS) return Number.NaN;
    const code = codes.size;
    codes.set(word, code);
    (this.words[column] as string[]).push(word);
    return code;
  }

  #add(line: number): void {
    this.lines.add(this.#blocks.rowCount, line);
    this.#blocks.add(this.#row);
  }
}

/** Whether a row holds just these names. */
export function sameFields(fields: readonly string[], names: readonly string[] | null): boolean {
  if (names === null || fields.length !== names.length) return false;
  return fields.every((field, i) => field.trim() === names[i]!.trim()) && names.some((name) => name.trim() !== '');
}
