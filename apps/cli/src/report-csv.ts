import { type Cell, columnCells, csvText } from '@surae/exchange';
import { REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import type { Outcome } from './assess-file.ts';
import type { WholeTable } from './comparison-tables.ts';
import { FILE_COLUMN, type FrameColumn, ORIGIN_COLUMNS, REASON_COLUMN, TRIAL_COLUMNS } from './frame-columns.ts';
import type { Io } from './io.ts';
import { issueRows } from './issue-rows.ts';
import { rounded } from './rounded.ts';
import { WriteFolder } from './write-folder.ts';

/** The tables that are written, in the order in which they are named to the user. */
const TABLES = ['repetitions.csv', 'sets.csv', 'issues.csv', 'refused.csv', 'dictionary.csv'] as const;

const ISSUE_COLUMNS: readonly (readonly [key: string, unit: string, description: string])[] = [
  ['code', '', 'kind of the issue'],
  ['severity', '', 'note, warning or invalid'],
  ['from_s', 's', 'where it begins on the clock of the recording; empty where it has no place'],
  ['to_s', 's', 'where it ends'],
  ['details', '', 'figures of the issue by name, as JSON'],
  ['sentence', '', 'the same in words'],
];

/** The results of a run as tables. Rows are kept until every recording was seen, then all tables are written. */
export class CsvReport {
  readonly #folder: WriteFolder;
  readonly #name: string;
  readonly #carried: readonly string[];
  readonly #rows = new Map<(typeof TABLES)[number], Cell[][]>(TABLES.map((table) => [table, []]));

  /**
   * @param carried - names of the columns of the manifest that are handed on
   * @param more - names of the tables that are handed over whole at the end
   * @throws {@link UsageError} when a table is there already, before anything is assessed
   */
  constructor(
    output: { readonly folder: string; readonly replace: boolean },
    carried: readonly string[],
    io: Io,
    more: readonly string[] = [],
  ) {
    this.#folder = new WriteFolder(output.folder, [...TABLES, ...more], output.replace, io);
    this.#name = output.folder;
    this.#carried = carried;
  }

  add(outcome: Outcome): void {
    const { item } = outcome;
    const framed = (columns: readonly FrameColumn[]): Cell[] => columns.map(({ value }) => value(outcome));
    const before = [item.file, ...this.#carried.map((name) => item.carried[name] ?? '')];
    if (outcome.status === 'refused') {
      this.#add('refused.csv', [...before, ...framed(TRIAL_COLUMNS), ...framed([ORIGIN_COLUMNS[0]!, REASON_COLUMN])]);
      return;
    }
    const trial = [...before, ...framed(TRIAL_COLUMNS)];
    if (outcome.test === 'heel-raise') {
      for (const repetition of outcome.report.repetitions) {
        this.#add('repetitions.csv', [...trial, ...columnCells(REPETITION_COLUMNS, repetition)]);
      }
      this.#add('sets.csv', [
        ...trial,
        ...framed(ORIGIN_COLUMNS),
        ...columnCells(SET_COLUMNS, outcome.report),
        outcome.report.withheld.join('; '),
      ]);
    }
    for (const issue of issueRows(outcome)) {
      this.#add('issues.csv', [
        ...trial,
        issue.code,
        issue.severity,
        rounded(issue.from_s) as number | null,
        rounded(issue.to_s) as number | null,
        JSON.stringify(rounded(issue.details)),
        issue.sentence,
      ]);
    }
  }

  /** Writes the tables, and those that are handed over whole, and says what was written. */
  write(whole: readonly WholeTable[] = []): string[] {
    const headers = this.#headers();
    for (const entry of dictionary(this.#carried, headers)) this.#add('dictionary.csv', entry);
    for (const { name, columns } of whole) {
      for (const { key, unit, kind, description } of columns) {
        this.#add('dictionary.csv', [name, key, kind === 'number' ? unit : '', kind, description]);
      }
    }
    const tables = [
      ...TABLES.map((name) => ({ name, header: headers[name], rows: this.#rows.get(name)! })),
      ...whole.map(({ name, columns, rows }) => ({ name, header: columns.map(({ key }) => key), rows })),
    ];
    for (const { name, header, rows } of tables) this.#folder.write(name, csvText(header, rows));
    return tables.map(({ name, rows }) => `${this.#name}/${name}: ${rows.length} rows`);
  }

  #add(table: (typeof TABLES)[number], row: Cell[]): void {
    this.#rows.get(table)!.push(row);
  }

  #headers(): Record<(typeof TABLES)[number], string[]> {
    const keys = (columns: readonly { readonly key: string }[]): string[] => columns.map(({ key }) => key);
    const trial = [FILE_COLUMN.key, ...this.#carried, ...keys(TRIAL_COLUMNS)];
    return {
      'repetitions.csv': [...trial, ...keys(REPETITION_COLUMNS)],
      'sets.csv': [...trial, ...keys(ORIGIN_COLUMNS), ...keys(SET_COLUMNS), 'withheld'],
      'issues.csv': [...trial, ...ISSUE_COLUMNS.map(([key]) => key)],
      'refused.csv': [...trial, ORIGIN_COLUMNS[0]!.key, REASON_COLUMN.key],
      'dictionary.csv': ['table', 'column', 'unit', 'kind', 'description'],
    };
  }
}

/** One line for every column of every table. */
function dictionary(carried: readonly string[], headers: Readonly<Record<string, readonly string[]>>): string[][] {
  const known = new Map<string, readonly [unit: string, kind: string, description: string]>();
  for (const { key, description } of [FILE_COLUMN, ...TRIAL_COLUMNS, ...ORIGIN_COLUMNS, REASON_COLUMN]) {
    known.set(key, ['', 'text', description]);
  }
  for (const [key, unit, description] of ISSUE_COLUMNS)
    known.set(key, [unit, unit === '' ? 'text' : 'number', description]);
  for (const name of carried) known.set(name, ['', 'text', 'as it stood in the manifest']);
  known.set('withheld', ['', 'text', 'codes of what was not given, for which figures are empty']);
  const rows: string[][] = [];
  for (const table of TABLES.filter((name) => name !== 'dictionary.csv')) {
    const columns = table === 'repetitions.csv' ? REPETITION_COLUMNS : table === 'sets.csv' ? SET_COLUMNS : [];
    const figures = new Map(
      columns.map(({ key, unit, kind, description }) => [key, [unit, kind, description] as const]),
    );
    for (const column of headers[table]!) {
      rows.push([table, column, ...(known.get(column) ?? figures.get(column) ?? ['', '', ''])]);
    }
  }
  return rows;
}
