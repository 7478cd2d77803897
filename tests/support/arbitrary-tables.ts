import fc from 'fast-check';
import type { Cell, Table, TableColumn } from '../../packages/exchange/src/tables/table.ts';
import { tableOf } from '../../packages/exchange/src/tables/table.ts';

/** Texts that break careless writers: quotes, line breaks, commas, formulas, guards, names of many scripts. */
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.constantFrom(
    '=1+1',
    "'=1+1",
    "''",
    '+49 30',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\r\n',
    '\n',
    '"',
    '""',
    'a,b',
    'a "b", c\r\nd',
    ' ',
    'null',
    'true',
    '0',
    'Zoë Ångström',
    '山田 花子',
    '👩🏽‍🔬',
    'אבג',
    '\uFF1D1',
    '\uFEFF',
  ),
);

const number = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constantFrom(0, -0, 5e-324, -5e-324, 1.7976931348623157e308, 1e21, 1e-7, 0.1, -1, 9007199254740993),
);

const CELLS = { number, text, list: text, flag: fc.boolean() } as const;

const column = fc.record({
  key: fc.stringMatching(/^[a-z][a-z0-9_.-]{0,10}$/),
  unit: fc.constantFrom('1', 'mm', 'N.m/s', '%'),
  kind: fc.constantFrom('number', 'text', 'list', 'flag'),
  description: text.map((words) => words || 'nothing'),
  source: fc.constantFrom('definition', 'ours'),
});

/** A table of any shape, as the writers take it. */
export const arbitraryTable: fc.Arbitrary<Table> = fc
  .uniqueArray(column, { minLength: 1, maxLength: 6, selector: ({ key }) => key })
  .chain((drawn) => {
    const columns = drawn.map(
      (one): TableColumn => ({
        ...one,
        kind: one.kind,
        unit: one.kind === 'number' ? one.unit : '1',
      }),
    );
    const row = fc.tuple(...columns.map(({ kind }) => fc.option(CELLS[kind] as fc.Arbitrary<Cell>, { nil: null })));
    return fc.array(row, { maxLength: 8 }).map((rows) => tableOf({ name: 'things', title: 'Things', columns, rows }));
  });
