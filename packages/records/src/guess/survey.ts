import { quoted, RecordError } from '../errors.ts';
import { steadyClock } from '../form/clock.ts';
import { filledGroups, namesBelow } from '../form/group-names.ts';
import { joinedChunks } from '../form/joined-chunks.ts';
import { missingTexts, type NumberForm } from '../form/number-form.ts';
import { refuseForeign } from '../form/refuse-foreign.ts';
import { type FieldKind, fieldLabel, type RowForm } from '../form/row-form.ts';
import { RowReader } from '../form/row-reader.ts';
import { type Answers, formAnswers, requireKnownAnswers, timeAnswers, useAnswers, withAnswers } from './answers.ts';
import { guessColumns } from './column-guess.ts';
import { type NameReading, readGroupedName, readName } from './column-name.ts';
import { type DatesGuess, guessDates } from './date-guess.ts';
import { guessDelimiter } from './delimiter-guess.ts';
import { guessEncoding } from './encoding-guess.ts';
import type { FormProposal } from './form-proposal.ts';
import { type GroupTimes, groupTimes, unusedForTimes } from './group-times.ts';
import { evidence, type Guessed, guessed } from './guessed.ts';
import { headLines } from './head-lines.ts';
import { guessLayout, type Layout } from './layout-guess.ts';
import { guessMarks, numberFormOf } from './mark-guess.ts';
import { decimalsOf, OddLineCollector } from './odd-lines.ts';
import { type PartsProposal, partsByColumn, partsByTime } from './parts.ts';
import { readPreamble } from './preamble.ts';
import type { SurveyedTable } from './proposal.ts';
import type { ColumnUse } from './quantity-guess.ts';
import { questionsOf } from './questions.ts';
import { guessTime, perSecond, type TimeProposal } from './time-guess.ts';
import { LONG_S, movingWindows } from './windows.ts';

/** So much of a file is looked at before its rows are read [bytes]; ours. */
const HEAD_BYTES = 262_144;
const FIRST_ROWS = 8;

interface Begun {
  readonly form: FormProposal;
  readonly layout: Layout;
  readonly rows: RowForm;
  readonly reader: RowReader;
  readonly collector: OddLineCollector;
}

/** Looks at a file that nobody described, chunk by chunk: its head tells the form, all of it the numbers. */
export class TableSurvey {
  readonly #file: string | undefined;
  readonly #answers: Answers;
  #head: Uint8Array[] = [];
  #byteLength = 0;
  #begun: Begun | undefined;

  constructor(options: { readonly file?: string; readonly answers?: Answers } = {}) {
    this.#file = options.file;
    this.#answers = options.answers ?? {};
    requireKnownAnswers(this.#answers, null, this.#file);
  }

  /** @throws {@link RecordError} where the bytes are no table of numbers */
  push(chunk: Uint8Array): void {
    this.#byteLength += chunk.length;
    if (this.#begun !== undefined) {
      this.#begun.reader.push(chunk);
      return;
    }
    this.#head.push(chunk);
    if (this.#byteLength >= HEAD_BYTES) this.#begin(false);
  }

  /** The proposal, when all chunks were handed over. */
  end(): SurveyedTable {
    if (this.#begun === undefined) this.#begin(true);
    const begun = this.#begun!;
    begun.reader.end();
    return this.#propose(begun);
  }

  #begin(isWhole: boolean): void {
    const head = joinedChunks(this.#head);
    this.#head = [];
    const at = this.#file === undefined ? {} : { file: this.#file };
    refuseForeign(head, this.#file);
    const told = formAnswers(this.#answers);
    const guess = said(told.encoding, guessEncoding(head, isWhole));
    const encoding = guess.value!;
    const lines = headLines(head, encoding, isWhole);
    const division = guessDelimiter(lines, told.delimiter);
    const delimiter = division.delimiter.value;
    if (delimiter === null) {
      const first = lines.find((line) => line.trim() !== '') ?? '';
      throw new RecordError(lines.every((line) => line.trim() === '') ? 'empty-file' : 'no-table', {
        ...at,
        expected: 'rows of numbers, divided by commas, semicolons, tabs, bars or blanks',
        actual: first === '' ? 'no text' : `no such row in ${lines.length} lines; the first is ${quoted(first)}`,
      });
    }
    const first = guessMarks(division.rows, delimiter, told.decimal);
    const marks = { decimal: said(told.decimal, first.decimal), thousands: said(told.thousands, first.thousands) };
    const number: NumberForm = numberFormOf(marks);
    const dates: DatesGuess = said(told.dates, guessDates(division.rows, marks.decimal.value));
    const order = dates.value === 'none' ? null : dates.value;
    const grouped = told.header === undefined ? undefined : told.header === 'grouped';
    const layout = guessLayout(lines, division.rows, delimiter, { ...number, dates: order }, grouped);
    const header = told.header === 'none' ? 'none' : layout.header.value;
    const groupRow = header === null || header === 'none' ? null : header.groupRow;
    if (told.header === 'grouped' && groupRow === null) {
      const actual = quoted(layout.preamble.at(-1)?.text ?? 'no line');
      throw new RecordError('wrong-answer', { ...at, expected: 'a row of groups above the names', actual });
    }
    const unitRow = layout.unitRow.value;
    const rows: RowForm = {
      ...number,
      encoding,
      delimiter,
      dates: order,
      kinds: layout.kinds,
      names: header === null || header === 'none' ? null : header.names,
      groupRow,
      unitRow: unitRow === null || unitRow === 'none' ? null : unitRow.units,
      dataLine: layout.dataLine,
      missing: missingTexts,
    };
    const decimals = new Set(division.rows.map(({ fields }) => decimalsOf(fields.at(-1)!)));
    const collector = new OddLineCollector(layout.kinds, decimals.size === 1 ? [...decimals][0] : undefined);
    const reader = new RowReader(rows, collector, this.#file);
    this.#begun = {
      layout,
      rows,
      reader,
      collector,
      form: {
        encoding: guess,
        delimiter: division.delimiter,
        ...marks,
        dates,
        header: told.header === undefined ? layout.header : said(header!, layout.header),
        unitRow: layout.unitRow,
        preamble: layout.preamble,
        dataLine: layout.dataLine,
      },
    };
    reader.push(head);
  }

  /** A column that has times of its own cannot be used with those of another. */
  #refuseUse(uses: ReadonlyMap<number, ColumnUse>, { apart }: GroupTimes, labels: readonly string[]): void {
    const column = apart.find((index) => (uses.get(index) ?? 'unused') !== 'unused');
    if (column === undefined) return;
    throw new RecordError('wrong-answer', {
      ...(this.#file === undefined ? {} : { file: this.#file }),
      column: labels[column]!,
      expected: 'unused, since its group has times of its own, which are not those of the rows',
      actual: quoted(uses.get(column)!),
    });
  }

  #propose(begun: Begun): SurveyedTable {
    const { rows, reader, layout } = begun;
    if (reader.rowCount === 0) {
      throw new RecordError('no-table', {
        ...(this.#file === undefined ? {} : { file: this.#file }),
        row: rows.dataLine,
        expected: 'rows of numbers',
        actual: 'none that can be read',
      });
    }
    const columns = new Map(
      layout.kinds.flatMap((kind, i) => (kind === 'passed-over' ? [] : [[i, reader.take(i)] as const])),
    );
    const of = (answers: Answers): SurveyedTable => this.#answered(begun, columns, answers);
    return of(this.#answers);
  }

  #answered(begun: Begun, columns: ReadonlyMap<number, Float64Array>, answers: Answers): SurveyedTable {
    const { form, rows, reader, collector } = begun;
    const kinds: readonly FieldKind[] = rows.kinds;
    const labels = uniqueLabels(rows);
    requireKnownAnswers(answers, labels, this.#file);
    const preamble = readPreamble(form.preamble);
    const read = namesOf(rows);
    const inputs = kinds.map((kind, index) => ({
      index,
      label: labels[index]!,
      kind,
      name: read(index),
      samples: columns.get(index) ?? new Float64Array(0),
    }));
    const { rowCount } = reader;
    const candidates = inputs.filter(({ samples }) => samples.length > 0);
    const guess = guessTime(candidates, preamble, rowCount, timeAnswers(answers, labels));
    const groups = groupTimes(candidates, guess.column.value ?? -1, rows);
    const time = answers['time'] === undefined ? timeOfGroups(guess, groups, labels) : guess;
    const beside = unusedForTimes(candidates, groups, time.column.value ?? -1);
    const uses = useAnswers(answers, labels);
    this.#refuseUse(uses, groups, labels);
    const others = inputs.filter(
      ({ index }) => index !== time.column.value && !beside.some((column) => column.index === index),
    );
    const proposed = [...withAnswers(guessColumns(others, preamble, uses), answers, this.#file), ...beside].sort(
      (a, b) => a.index - b.index,
    );
    const times = timesOf(time, columns, rowCount);
    const parts = partsOf(inputs, reader, times, time);
    const wrong = wrongSteps(times, parts);
    const main = proposed.find(({ use }) => use.value !== null && use.value !== 'unused');
    const isLong = time.durationS !== null && time.durationS >= LONG_S && parts.parts.length === 1;
    const lineOf = (row: number): number => reader.lines.lineOf(row);
    return {
      times,
      columns,
      withAnswers: (more) => this.#answered(begun, columns, more),
      proposal: {
        form,
        names: rows.names,
        groupRow: rows.groupRow,
        groupTimes: groups,
        unitRow: rows.unitRow,
        labels,
        kinds,
        rowCount,
        byteLength: this.#byteLength,
        time,
        columns: proposed,
        odd: collector.collected(lineOf(rowCount - 1)),
        parts,
        partLines: parts.parts.map(({ fromRow, toRow }) => ({ from: lineOf(fromRow), to: lineOf(toRow - 1) })),
        clockLines: time.changes.map(({ kind, index }) => ({ kind, line: lineOf(index) })),
        wrongSteps: { count: wrong.count, line: wrong.first < 0 ? null : lineOf(wrong.first) },
        isLong,
        windows: isLong && main !== undefined ? movingWindows(times, columns.get(main.index)!) : [],
        firstRows: Array.from({ length: Math.min(FIRST_ROWS, rowCount) }, (_, row) =>
          kinds.map((kind, column) => {
            const value = columns.get(column)?.[row];
            if (value === undefined || Number.isNaN(value)) return null;
            return kind === 'word' ? (reader.words[column]![value] ?? null) : value;
          }),
        ),
        questions: questionsOf(form, time, proposed, labels),
      },
    };
  }
}

/** The name of each column as it is read: where there are groups, by its own words first. */
function namesOf({ names, groupRow, unitRow }: RowForm): (index: number) => NameReading {
  const groups = groupRow === null ? undefined : filledGroups(groupRow);
  const below = groupRow === null || names === null ? names : namesBelow(groupRow, names)!;
  return (index) =>
    groups === undefined
      ? readName(below?.[index] ?? '', unitRow?.[index])
      : readGroupedName(groups[index]!, below![index]!, unitRow?.[index]);
}

/** Times that are those of every group are as good as one column; where they are not, it is asked which the rows are read by. */
function timeOfGroups(time: TimeProposal, { alike, unlike }: GroupTimes, labels: readonly string[]): TimeProposal {
  const { value, options, evidence: because } = time.column;
  if (value === null || alike.length + unlike.length === 0) return time;
  if (unlike.length === 0) {
    const isOne = (one: number): boolean => alike.includes(one);
    const sum = options.reduce((total, one) => total + (isOne(one.value) ? one.probability : 0), 0);
    const rest = options.filter((one) => !isOne(one.value));
    return { ...time, column: guessed(value, sum, because, rest) };
  }
  const probability = 1 / (1 + unlike.length);
  const others = unlike.map((column) => ({ value: column, probability }));
  const differ = evidence('times-differ', { column: labels[value]!, other: labels[unlike[0]!]! });
  return { ...time, column: guessed(value, probability, [...because, differ], others) };
}

/** What somebody said comes before what was guessed. */
function said<Value>(answer: Value | undefined, guess: Guessed<Value>): Guessed<Value> {
  return answer === undefined ? guess : guessed(answer, 1, [evidence('told')]);
}

/** Names of the columns, or their numbers; of two with one name each has its number behind it. */
function uniqueLabels({ names, kinds }: RowForm): string[] {
  const labels = kinds.map((_, i) => fieldLabel(names, i));
  return labels.map((label, i) => (labels.indexOf(label) === labels.lastIndexOf(label) ? label : `${label} #${i + 1}`));
}

function timesOf(time: TimeProposal, columns: ReadonlyMap<number, Float64Array>, rowCount: number): Float64Array {
  const unit = time.unit.value;
  const column = columns.get(time.column.value ?? -1);
  if (column !== undefined && time.clock !== null) return steadyClock(column, time.clock).timesS;
  const divisor = unit === null ? undefined : perSecond[unit];
  if (column !== undefined && divisor !== undefined) return column.map((value) => value / divisor);
  const rate = time.rateHz.asks ? 1 : (time.rateHz.value ?? 1);
  return Float64Array.from({ length: rowCount }, (_, row) => row / rate);
}

function partsOf(
  inputs: readonly {
    readonly index: number;
    readonly kind: FieldKind;
    readonly name: { readonly isIdentity: boolean };
    readonly samples: Float64Array;
  }[],
  reader: RowReader,
  times: Float64Array,
  time: TimeProposal,
): PartsProposal {
  for (const { index, kind, name, samples } of inputs) {
    if (!name.isIdentity || index === time.column.value) continue;
    const words = kind === 'word' ? reader.words[index]! : [...new Set(samples)].slice(0, 101).map(String);
    const codes = kind === 'word' ? samples : samples.map((value) => words.indexOf(String(value)));
    const parts = partsByColumn(codes, words, index);
    if (parts !== undefined) return parts;
  }
  return time.rateHz.asks && time.unit.value === 'sample' ? partsByTime(new Float64Array(0)) : partsByTime(times);
}

/** Steps of time that go back or stand still within a part, which a recording cannot have. */
function wrongSteps(times: Float64Array, { parts }: PartsProposal): { readonly count: number; readonly first: number } {
  let [count, first] = [0, -1];
  for (const { fromRow, toRow } of parts) {
    for (let i = fromRow + 1; i < toRow; i += 1) {
      if (!(times[i]! <= times[i - 1]!)) continue;
      count += 1;
      if (first < 0) first = i;
    }
  }
  return { count, first };
}
