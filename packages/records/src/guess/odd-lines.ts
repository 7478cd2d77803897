import { saysMissing } from '../form/number-form.ts';
import type { FieldKind, RowWatcher } from '../form/row-form.ts';

/** Lines that are no rows, how many and which; the first ones by number. */
export interface LineList {
  readonly count: number;
  readonly lines: readonly number[];
}

/** A field that is nothing of its column. */
export interface OddCell {
  readonly line: number;
  readonly columnIndex: number;
  readonly text: string;
}

/** A line that is no row. */
export interface OddText {
  readonly line: number;
  readonly text: string;
}

/** Everything in the body of a table that is no row of numbers. */
export interface OddLines {
  readonly blank: LineList;
  readonly remarks: LineList;
  readonly repeated: LineList;
  /** fields that say that a value is missing: a gap, never a zero */
  readonly missing: LineList & { readonly texts: readonly string[] };
  /** lines below the last row */
  readonly footer: readonly OddText[];
  /** lines between rows that are none */
  readonly stray: LineList & { readonly first: OddText | null };
  /** fields that cannot be read; their rows are left out of the proposal, and a recording cannot be made of them */
  readonly unreadable: LineList & { readonly first: OddCell | null };
  /** the last line has no line end */
  readonly openEnd: { readonly line: number; readonly isRead: boolean } | null;
}

const MOST_LINES = 200;

class Lines {
  count = 0;
  readonly lines: number[] = [];

  add(line: number): void {
    this.count += 1;
    if (this.lines.length < MOST_LINES) this.lines.push(line);
  }

  get list(): LineList {
    return { count: this.count, lines: this.lines };
  }
}

/** Collects what is no row, and lets the reading go on. */
export class OddLineCollector implements RowWatcher {
  readonly #kinds: readonly FieldKind[];
  readonly #places: ReadonlySet<number>;
  readonly #blank = new Lines();
  readonly #remarks = new Lines();
  readonly #repeated = new Lines();
  readonly #missing = new Lines();
  readonly #texts = new Set<string>();
  readonly #unreadable = new Lines();
  #firstUnreadable: OddCell | null = null;
  readonly #noRows: OddText[] = [];
  #noRowCount = 0;
  #openEnd: OddLines['openEnd'] = null;
  /** number of decimals in each column that all rows of the head have; undefined where they differ */
  readonly #lastDecimals: number | undefined;

  /** @param lastDecimals - digits behind the mark that every last field of the head has, or undefined */
  constructor(kinds: readonly FieldKind[], lastDecimals: number | undefined) {
    this.#kinds = kinds;
    this.#lastDecimals = lastDecimals;
    this.#places = new Set(kinds.flatMap((kind, i) => (kind === 'word' || kind === 'passed-over' ? [] : [i])));
  }

  blank(line: number): void {
    this.#blank.add(line);
  }

  remark(line: number): void {
    this.#remarks.add(line);
  }

  repeated(line: number): void {
    this.#repeated.add(line);
  }

  missing(line: number, _columnIndex: number, text: string): void {
    this.#missing.add(line);
    this.#texts.add(text);
  }

  unreadable(line: number, columnIndex: number, text: string): void {
    // where nothing of a line can be read, it is a text with as many fields by chance
    this.#unreadable.add(line);
    this.#firstUnreadable ??= { line, columnIndex, text };
  }

  noRow(line: number, text: string): void {
    this.#noRowCount += 1;
    if (this.#noRows.length < MOST_LINES) this.#noRows.push({ line, text });
  }

  openEnd(line: number, _text: string, fields: readonly string[] | undefined): boolean {
    // a number that was cut is a number too: only one with as many decimals as all others is whole
    const last = fields?.length === this.#kinds.length ? fields.at(-1)!.trim() : undefined;
    const isRead = last !== undefined && this.#lastDecimals !== undefined && decimalsOf(last) === this.#lastDecimals;
    const isText =
      fields === undefined || !fields.some((field, i) => this.#places.has(i) && /^[+-]?[\d.,]/.test(field.trim()));
    this.#openEnd = isText ? null : { line, isRead };
    return isRead || isText;
  }

  /** Everything that was met, when the last row is known. */
  collected(lastRowLine: number): OddLines {
    const footer = this.#noRows.filter(({ line }) => line > lastRowLine);
    const strays = this.#noRows.filter(({ line }) => line < lastRowLine);
    return {
      blank: this.#blank.list,
      remarks: this.#remarks.list,
      repeated: this.#repeated.list,
      missing: { ...this.#missing.list, texts: [...this.#texts].slice(0, 20) },
      footer: footer.slice(0, 20),
      stray: {
        count: this.#noRowCount - footer.length,
        lines: strays.map(({ line }) => line),
        first: strays[0] ?? null,
      },
      unreadable: { ...this.#unreadable.list, first: this.#firstUnreadable },
      openEnd: this.#openEnd,
    };
  }
}

/** Digits behind the mark of a number; undefined where it has none. */
export function decimalsOf(field: string): number | undefined {
  if (saysMissing(field)) return undefined;
  return /^[+-]?\d*[.,](\d+)$/.exec(field.trim())?.[1]!.length;
}
