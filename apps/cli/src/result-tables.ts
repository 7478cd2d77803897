import { REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';
import type { TestName } from '@surae/study/words';
import { COMPARISON_SHAPES } from './comparison-tables.ts';
import { FILE_COLUMN, type FrameColumn, ORIGIN_COLUMNS, REASON_COLUMN, TRIAL_COLUMNS } from './frame-columns.ts';
import { HOP_SHAPES } from './hop-tables.ts';
import { pullShapes } from './pull-tables.ts';
import { type ResultTable, word } from './table-shape.ts';

type Column = ResultTable['columns'][number];

const framed = (columns: readonly FrameColumn[]): Column[] =>
  columns.map(({ key, description }) => word(key, description));

const ISSUE_COLUMNS: readonly Column[] = [
  word('code', 'kind of the issue'),
  word('severity', 'note, warning or invalid'),
  {
    key: 'from_s',
    unit: 's',
    kind: 'number',
    description: 'where it begins on the clock of the recording; empty where it has no place',
  },
  { key: 'to_s', unit: 's', kind: 'number', description: 'where it ends' },
  word('details', 'figures of the issue by name, as JSON'),
  word('sentence', 'the same in words'),
];

const DICTIONARY: ResultTable = {
  name: 'dictionary.csv',
  title: 'every column of every table',
  columns: ['table', 'column', 'unit', 'kind', 'description'].map((key) => word(key, '')),
};

/** What a list of recordings asks for. */
export interface AskedTables {
  /** names of the columns of the manifest that are handed on */
  readonly carried: readonly string[];
  readonly tests: ReadonlySet<TestName>;
  /** whether persons are named, so that results stand beside each other */
  readonly compares: boolean;
}

/** The tables of a run in the order in which they are named to the user; those of hops, pulls and comparisons where they are asked for. */
export function resultTables({ carried, tests, compares }: AskedTables): ResultTable[] {
  const trial = [
    ...framed([FILE_COLUMN]),
    ...carried.map((name) => word(name, 'as it stood in the manifest')),
    ...framed(TRIAL_COLUMNS),
  ];
  const origin = framed(ORIGIN_COLUMNS);
  const withheld = word('withheld', 'codes of what was not given, for which figures are empty');
  return [
    { name: 'repetitions.csv', title: 'every heel raise', columns: [...trial, ...REPETITION_COLUMNS] },
    { name: 'sets.csv', title: 'every set of heel raises', columns: [...trial, ...origin, ...SET_COLUMNS, withheld] },
    { name: 'issues.csv', title: 'what to know of a recording', columns: [...trial, ...ISSUE_COLUMNS] },
    { name: 'refused.csv', title: 'what was refused', columns: [...trial, origin[0]!, ...framed([REASON_COLUMN])] },
    DICTIONARY,
    ...(tests.has('hop-series') ? HOP_SHAPES : []),
    ...(tests.has('isometric') ? pullShapes(trial, origin, withheld) : []),
    ...(compares ? COMPARISON_SHAPES : []),
  ];
}

/** One line for every column of every table but the dictionary itself. */
export function dictionaryRows(tables: readonly ResultTable[]): string[][] {
  return tables
    .filter((table) => table !== DICTIONARY)
    .flatMap(({ name, columns }) =>
      columns.map(({ key, unit, kind, description }) => [name, key, kind === 'number' ? unit : '', kind, description]),
    );
}
