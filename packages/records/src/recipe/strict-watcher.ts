import { quoted, RecordError, type RecordErrorCode } from '../errors.ts';
import { saysMissing } from '../form/number-form.ts';
import type { RowWatcher } from '../form/row-form.ts';
import type { LineList } from '../guess/odd-lines.ts';
import type { Recipe } from './recipe.ts';

/** What was passed over while a file was read by a recipe: counted, and listed by line. */
export interface PassedOver {
  readonly blank: LineList;
  readonly remarks: LineList;
  readonly repeated: LineList;
  /** values that are missing: gaps */
  readonly missing: LineList;
  readonly footer: LineList;
  /** line of a last row without a line end that was left out; null without one */
  readonly openEnd: number | null;
}

const MOST_LINES = 200;

/** Refuses whatever a recipe does not know, with file, row, column, what was expected and what came. */
export class StrictWatcher implements RowWatcher {
  readonly remarkTexts: string[] = [];
  /** rows that had been read when the footer began; undefined before it */
  rowsAtFooter: number | undefined;
  readonly #lists = { blank: list(), remarks: list(), repeated: list(), missing: list(), footer: list() };
  #openEnd: number | null = null;
  readonly #recipe: Recipe;
  readonly #labels: readonly string[];
  readonly #file: string | undefined;
  readonly #rowCount: () => number;
  #lastMissing = -1;

  constructor(recipe: Recipe, labels: readonly string[], file: string | undefined, rowCount: () => number) {
    this.#recipe = recipe;
    this.#labels = labels;
    this.#file = file;
    this.#rowCount = rowCount;
  }

  get passedOver(): PassedOver {
    return { ...this.#lists, openEnd: this.#openEnd };
  }

  blank(line: number): void {
    note(this.#lists.blank, line);
  }

  remark(line: number, text: string): void {
    note(this.#lists.remarks, line);
    if (this.remarkTexts.length < 50) this.remarkTexts.push(text);
  }

  repeated(line: number): void {
    note(this.#lists.repeated, line);
  }

  missing(line: number, columnIndex: number, text: string): void {
    if (columnIndex === this.#recipe.time.column) {
      throw this.#no('empty-field', line, columnIndex, 'a time', text === '' ? 'an empty field' : quoted(text));
    }
    if (line === this.#lastMissing) this.#lists.missing.count += 1;
    else note(this.#lists.missing, line);
    this.#lastMissing = line;
  }

  unreadable(line: number, columnIndex: number, text: string): void {
    const kind = this.#recipe.fields[columnIndex]!;
    const { decimalMark } = this.#recipe;
    const expected =
      kind === 'number'
        ? `a number with the decimal mark "${decimalMark}"`
        : `a ${kind} such as ${clockExamples[kind as keyof typeof clockExamples]}`;
    const code = text === '' ? 'empty-field' : saysMissing(text) ? 'not-finite' : 'not-a-number';
    throw this.#no(code, line, columnIndex, expected, text === '' ? 'an empty field' : quoted(text));
  }

  noRow(line: number, text: string, fields: readonly string[] | undefined): void {
    const trimmed = text.trim();
    if (this.#recipe.footer.some((begin) => trimmed.startsWith(begin))) {
      note(this.#lists.footer, line);
      this.rowsAtFooter ??= this.#rowCount();
      return;
    }
    if (this.rowsAtFooter !== undefined) {
      note(this.#lists.footer, line);
      return;
    }
    const count = this.#recipe.fields.length;
    if (fields === undefined) {
      throw this.#no(
        'malformed-quote',
        line,
        undefined,
        'quotation marks around whole fields of one line',
        quoted(trimmed),
      );
    }
    if (fields.length !== count) {
      throw this.#no('ragged-row', line, undefined, `${count} fields`, `${fields.length}, ${quoted(trimmed)}`);
    }
    throw this.#no('stray-line', line, undefined, 'a row of numbers', quoted(trimmed));
  }

  openEnd(line: number, text: string, fields: readonly string[] | undefined): boolean {
    const { footer, openEnd, fields: kinds } = this.#recipe;
    if (this.rowsAtFooter !== undefined || footer.some((begin) => text.trim().startsWith(begin))) return true;
    if (openEnd === 'read') return true;
    if (openEnd === 'refused') {
      const column = fields === undefined ? undefined : Math.min(fields.length, kinds.length) - 1;
      throw this.#no(
        'cut-off',
        line,
        column,
        'a line end behind the last row',
        'the end of the file: it may have been cut off',
      );
    }
    this.#openEnd = line;
    return false;
  }

  #no(code: RecordErrorCode, row: number, column: number | undefined, expected: string, actual: string): RecordError {
    return new RecordError(code, {
      ...(this.#file === undefined ? {} : { file: this.#file }),
      row,
      ...(column === undefined ? {} : { column: this.#labels[column] ?? `${column + 1}` }),
      expected,
      actual,
    });
  }
}

const clockExamples = {
  'time-of-day': '13:05:01.25',
  'date-time': '2026-03-29 13:05:01.25',
  instant: '2026-03-29T13:05:01.25+02:00',
};

interface Growing {
  count: number;
  lines: number[];
}

function list(): Growing {
  return { count: 0, lines: [] };
}

function note(to: Growing, line: number): void {
  to.count += 1;
  if (to.lines.length < MOST_LINES) to.lines.push(line);
}
