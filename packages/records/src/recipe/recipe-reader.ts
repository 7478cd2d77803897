import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { RecordError } from '../errors.ts';
import { type ClockChange, type ClockKind, steadyClock } from '../form/clock.ts';
import { joinedChunks } from '../form/joined-chunks.ts';
import { refuseForeign } from '../form/refuse-foreign.ts';
import { fieldLabel, type RowForm } from '../form/row-form.ts';
import { RowReader } from '../form/row-reader.ts';
import { type PartsProposal, partsByColumn, partsByTime } from '../guess/parts.ts';
import { perSecond } from '../guess/time-guess.ts';
import { movingWindows, type Window } from '../guess/windows.ts';
import type { Side } from '../quantities.ts';
import { freezeRecording, type Recording } from '../recording.ts';
import { chosenRows, type RowRange } from './chosen-rows.ts';
import { type Difference, fitRecipe } from './fit-recipe.ts';
import type { Recipe } from './recipe.ts';
import { recordedGroups } from './recorded-groups.ts';
import { type PassedOver, StrictWatcher } from './strict-watcher.ts';

const HEAD_BYTES = 262_144;

/** What is known beside a recipe about one file. */
export interface RecipeOptions {
  /** name of the file, for refusals only */
  readonly file?: string;
  /** samples a second, where rows are counted and the recipe does not say it */
  readonly rateHz?: number;
  /** which part of a file with several, by its number from 1 or its label; `all` reads them as one */
  readonly part?: string | number;
  /** which stretch of a long recording; `all` reads the whole */
  readonly window?: Window | 'all';
  /** side of the columns for which the recipe tells none */
  readonly side?: Side;
}

/** A recording that a recipe made of a file, and what was passed over. */
export interface RecipeReading {
  readonly recording: Recording;
  readonly passedOver: PassedOver;
  /** where the clock of the file did not go on as time did, by line */
  readonly clockChanges: readonly (ClockChange & { readonly line: number })[];
}

/** What a person has to choose before a file can be read that fits its recipe: what is in it, or what it does not tell. */
export interface OpenChoices {
  /** parts of which one is meant; empty where there is one alone */
  readonly parts: readonly { readonly label: string; readonly fromLine: number; readonly toLine: number }[];
  /** whether it is so long that somebody has to say where the test is */
  readonly isLong: boolean;
  /** where something moves in a long recording */
  readonly windows: readonly Window[];
  /** whether the samples a second have to be told */
  readonly rate: boolean;
}

/** Reads a file by a recipe, chunk by chunk. What the recipe does not know is refused, and nothing is left of it. */
export class RecipeReader {
  readonly #recipe: Recipe;
  readonly #options: RecipeOptions;
  readonly #hash = sha256.create();
  #byteLength = 0;
  #head: Uint8Array[] = [];
  #rows: { readonly reader: RowReader; readonly watcher: StrictWatcher } | undefined;
  #preamble: readonly string[] = [];
  #choices: OpenChoices | undefined;

  constructor(recipe: Recipe, options: RecipeOptions = {}) {
    this.#recipe = recipe;
    this.#options = options;
  }

  /** @throws {@link RecordError} `unlike-recipe` with what differs; every refusal of a row with its place */
  push(chunk: Uint8Array): void {
    this.#hash.update(chunk);
    this.#byteLength += chunk.length;
    if (this.#rows !== undefined) {
      this.#rows.reader.push(chunk);
      return;
    }
    this.#head.push(chunk);
    if (this.#byteLength >= HEAD_BYTES) this.#begin(false);
  }

  /** What there is to choose, once {@link end} refused the file with `several-parts`, `no-window` or `rate-unknown`. */
  get choices(): OpenChoices | undefined {
    return this.#choices;
  }

  /** The recording, when all chunks were handed over. */
  end(): RecipeReading {
    if (this.#rows === undefined) this.#begin(true);
    const { reader, watcher } = this.#rows!;
    reader.end();
    const { file } = this.#options;
    const at = file === undefined ? {} : { file };
    const { rowsAtFooter } = watcher;
    if (rowsAtFooter !== undefined && reader.rowCount > rowsAtFooter) {
      const row = reader.lines.lineOf(rowsAtFooter);
      throw new RecordError('stray-line', {
        ...at,
        row,
        expected: 'no row below the footer',
        actual: 'a row of numbers',
      });
    }
    if (reader.rowCount === 0) {
      throw new RecordError('header-only', { ...at, expected: 'rows of numbers', actual: 'no row' });
    }
    return this.#record(reader, watcher, at);
  }

  #begin(isWhole: boolean): void {
    const head = joinedChunks(this.#head);
    this.#head = [];
    const { file } = this.#options;
    refuseForeign(head, file);
    const recipe = this.#recipe;
    const fit = fitRecipe(head, isWhole, recipe);
    if (!fit.fits) throw unlike(fit.differences, recipe, file);
    this.#preamble = fit.preamble;
    const form: RowForm = {
      encoding: recipe.encoding,
      delimiter: recipe.delimiter,
      decimal: recipe.decimalMark,
      thousands: recipe.thousandsMark,
      dates: recipe.dates ?? null,
      kinds: recipe.fields,
      names: recipe.header,
      groupRow: recipe.groupRow ?? null,
      unitRow: recipe.unitRow,
      dataLine: fit.dataLine,
      missing: new Set(recipe.missing),
    };
    const labels = recipe.fields.map((_, i) => fieldLabel(recipe.header, i));
    const watcher: StrictWatcher = new StrictWatcher(recipe, labels, file, (): number => reader.rowCount);
    const reader: RowReader = new RowReader(form, watcher, file);
    this.#rows = { reader, watcher };
    reader.push(head);
  }

  #record(reader: RowReader, watcher: StrictWatcher, at: { readonly file?: string }): RecipeReading {
    const recipe = this.#recipe;
    const raw = new Map(this.#timeColumns().map((column) => [column, reader.take(column)]));
    this.#refuseOtherTimes(raw, reader, at);
    const { timesS, changes } = this.#times(raw, reader.rowCount, at);
    const parts = this.#parts(reader, timesS);
    const lineOf = (row: number): number => reader.lines.lineOf(row);
    const columns = new Map(recipe.columns.map(({ column }) => [column, reader.take(column)]));
    const windows = (): readonly Window[] => movingWindows(timesS, columns.get(recipe.columns[0]!.column)!);
    let rows: RowRange;
    try {
      rows = chosenRows(timesS, parts, this.#options, lineOf, windows);
    } catch (error) {
      this.#choices = openChoices(error, parts, lineOf, windows);
      throw error;
    }
    const groups = recordedGroups(recipe, timesS, columns, rows, { ...at, lineOf, side: this.#options.side });
    const used = new Set([recipe.time.column, recipe.people, ...columns.keys()]);
    return {
      recording: freezeRecording({
        source: { sha256: bytesToHex(this.#hash.digest()), byteLength: this.#byteLength },
        groups,
        deviceNotes: [...this.#preamble.slice(0, 50), ...watcher.remarkTexts],
        unusedColumns: recipe.fields.flatMap((_, i) =>
          used.has(i) ? [] : [{ column: fieldLabel(recipe.header, i), reason: 'unknown-name' as const }],
        ),
      }),
      passedOver: watcher.passedOver,
      clockChanges: changes.map((change) => ({ ...change, line: lineOf(change.index) })),
    };
  }

  /** Every column of times: that of the rows, and those of groups, which must hold the same. */
  #timeColumns(): number[] {
    const { column, alike, unit } = this.#recipe.time;
    return [...new Set([...(column === null || unit === 'sample' ? [] : [column]), ...(alike ?? [])])];
  }

  /** @throws {@link RecordError} `unlike-recipe` at the first row in which two groups have different times */
  #refuseOtherTimes(raw: ReadonlyMap<number, Float64Array>, reader: RowReader, at: { readonly file?: string }): void {
    const { time, header } = this.#recipe;
    const [first, ...others] = time.alike ?? [];
    if (first === undefined) return;
    const times = raw.get(first)!;
    for (const other of others) {
      const own = raw.get(other)!;
      const row = own.findIndex((one, i) => !Object.is(one, times[i]));
      if (row < 0) continue;
      throw new RecordError('unlike-recipe', {
        ...at,
        row: reader.lines.lineOf(row),
        column: fieldLabel(header, other),
        expected: `the time of the row in every group: ${times[row]} in "${fieldLabel(header, first)}"`,
        actual: Number.isNaN(own[row]) ? 'no time' : `${own[row]}`,
      });
    }
  }

  #times(
    columns: ReadonlyMap<number, Float64Array>,
    rowCount: number,
    at: { readonly file?: string },
  ): { timesS: Float64Array; changes: readonly ClockChange[] } {
    const { time, fields } = this.#recipe;
    if (time.column === null || time.unit === 'sample') {
      const rateHz = time.rateHz ?? this.#options.rateHz;
      if (rateHz === undefined) {
        this.#choices = { parts: [], isLong: false, windows: [], rate: true };
        const expected = 'the number of samples a second, which the file does not tell';
        throw new RecordError('rate-unknown', { ...at, expected, actual: `${rowCount} rows without times` });
      }
      return { timesS: Float64Array.from({ length: rowCount }, (_, row) => row / rateHz), changes: [] };
    }
    const raw = columns.get(time.column)!;
    if (time.unit === 'clock') return steadyClock(raw, fields[time.column] as ClockKind);
    const divisor = perSecond[time.unit]!;
    const timesS = divisor >= 1 ? raw.map((value) => value / divisor) : raw.map((value) => value * 60);
    return { timesS, changes: [] };
  }

  #parts(reader: RowReader, timesS: Float64Array): PartsProposal {
    const { people, fields } = this.#recipe;
    if (people !== null) {
      const raw = reader.take(people);
      const words = fields[people] === 'word' ? reader.words[people]! : [...new Set(raw)].slice(0, 101).map(String);
      const codes = fields[people] === 'word' ? raw : raw.map((value) => words.indexOf(String(value)));
      const parts = partsByColumn(codes, words, people);
      if (parts !== undefined) return parts;
    }
    return partsByTime(timesS);
  }
}

/** What there is to choose where rows were refused for want of a choice. */
function openChoices(
  error: unknown,
  { parts }: PartsProposal,
  lineOf: (row: number) => number,
  windows: () => readonly Window[],
): OpenChoices | undefined {
  const code = error instanceof RecordError ? error.code : undefined;
  const none = { parts: [], isLong: false, windows: [], rate: false };
  if (code === 'no-window') return { ...none, isLong: true, windows: windows() };
  if (code !== 'several-parts') return undefined;
  const lines = parts.map(({ label, fromRow, toRow }) => ({
    label,
    fromLine: lineOf(fromRow),
    toLine: lineOf(toRow - 1),
  }));
  return { ...none, parts: lines };
}

/** The refusal of a file that a recipe is not for, with the first places in which it differs. */
function unlike(differences: readonly Difference[], recipe: Recipe, file: string | undefined): RecordError {
  const first = differences[0]!;
  const place = ({ line, column }: Difference): string =>
    [line === undefined ? undefined : `line ${line}`, column === undefined ? undefined : `column ${column}`]
      .filter((part) => part !== undefined)
      .join(', ');
  const say = (one: Difference): string => {
    const where = place(one);
    if (one.what === 'rows' || one.what === 'header') return where === '' ? one.expected : `${one.expected} (${where})`;
    return `${one.what.replace('-', ' ')}${where === '' ? '' : ` in ${where}`} ${one.expected}`;
  };
  return new RecordError('unlike-recipe', {
    ...(file === undefined ? {} : { file }),
    ...(first.line === undefined ? {} : { row: first.line }),
    ...(first.column === undefined ? {} : { column: recipe.header?.[first.column - 1] || `${first.column}` }),
    expected: `a file like those of the recipe "${recipe.name}": ${differences.slice(0, 6).map(say).join('; ')}`,
    actual: differences
      .slice(0, 6)
      .map(({ actual }) => actual)
      .join('; '),
  });
}

/** The recording that a recipe makes of a whole file. */
export function readWithRecipe(bytes: Uint8Array, recipe: Recipe, options: RecipeOptions = {}): RecipeReading {
  const reader = new RecipeReader(recipe, options);
  reader.push(bytes);
  return reader.end();
}
