import { unguarded } from '@surae/records';
import { expect, test } from 'vitest';
import { COMPARISON_SHAPES } from '../../apps/cli/src/comparison-tables.ts';
import { assessRows, type Cells, WHOLE_ROW } from '../support/compared-manifest.ts';
import { csvCells, csvRows } from '../support/csv-rows.ts';

const left: Cells = { ...WHOLE_ROW, person: 'P1', visit: '1', side: 'left', order: 'first', file: 'l-12.csv' };
const right: Cells = {
  ...WHOLE_ROW,
  person: 'P1',
  visit: '1',
  side: 'right',
  order: 'second',
  rest_s: 150,
  symptomatic: 'mild',
  file: 'r-8.csv',
};
const again: Cells = { ...right, visit: '2', date: '2026-03-29', file: 'again-12.csv' };

test('tables of the legs, each leg, the changes and what is said; every column is in the dictionary', async () => {
  const { memory } = await assessRows([left, right, again], ['--csv', 'out']);
  const table = (name: string): Record<string, string>[] => csvRows(memory.text(`out/${name}`));
  expect(table('sides.csv')).toMatchObject([
    {
      person: 'P1',
      visit: '1',
      kind: 'ratio',
      over: 'right',
      'ratio.value': '0.666666667',
      hangs_on_reliability: 'true',
    },
    { visit: '2', kind: 'blocked', 'ratio.value': '', lower: '', hangs_on_reliability: '' },
  ]);
  expect(table('legs.csv').map((row) => [row['visit'], row['side'], row['value'], row['effort.good']])).toEqual([
    ['1', 'left', '12', 'yes'],
    ['1', 'right', '8', 'yes'],
    ['2', 'right', '12', 'yes'],
  ]);
  expect(table('changes.csv')).toMatchObject([
    { side: 'right', since: 'visit-before', from_visit: '1', to_visit: '2', 'change.value': '4', zone: 'cannot-tell' },
  ]);
  expect(table('remarks.csv')).toContainEqual(
    expect.objectContaining({ visit: '2', about: 'against-ratio', code: 'value-missing', unblock: 'Measure the leg.' }),
  );
  const entries = table('dictionary.csv');
  for (const name of COMPARISON_SHAPES.map(({ name }) => name)) {
    const listed = entries.filter((entry) => entry['table'] === name);
    expect(listed.map((entry) => entry['column'])).toEqual(csvCells(memory.text(`out/${name}`))[0]);
    expect(listed.filter((entry) => entry['description'] === '')).toEqual([]);
  }
  expect(memory.out).toContain('out/sides.csv: 2 rows');
});

test('without persons there is nothing to compare, and no table of it', async () => {
  const { memory } = await assessRows([{ file: 'l-12.csv', placement: 'heel' }], ['--csv', 'out']);
  expect([...memory.files.keys()].filter((name) => name.startsWith('out/'))).not.toContain('out/sides.csv');
});

test('a table of comparisons that is there already is not written over unasked', async () => {
  const { memory, code } = await assessRows([left], ['--csv', 'out'], { 'out/changes.csv': 'mine' });
  expect(code).toBe(2);
  expect(memory.error).toContain('out/changes.csv is there already');
});

/** Cells that a spreadsheet would run, or part at a semicolon, or quote. */
const messy = (name: string): Cells => ({
  ...left,
  person: `=HYPERLINK("http://x.invalid";"${name}")`,
  visit: '@now',
  '+site': '-2+3',
  remark: '\tcalm; =A1',
  offset: '-2.5',
  quoted: "'=1",
});

test('no cell of a manifest is run by a spreadsheet, and every one can be had back as it was', async () => {
  const rows: Cells[] = [
    { ...messy('l'), file: '=l-12.csv' },
    { ...messy('l'), side: 'right', order: 'second', rest_s: 150, file: '-r-8.csv' },
    { ...messy('l'), file: '+missing.csv' },
  ];
  const { memory, code } = await assessRows(rows, ['--csv', 'out']);
  expect(code).toBe(1);
  const tables = [...memory.files.keys()].filter((name) => name.startsWith('out/'));
  expect(tables.length).toBeGreaterThan(8);
  const run = tables.flatMap((name) =>
    csvCells(memory.text(name)).flatMap((row) =>
      row.filter((cell) => /^\s*[=@\t\r]|^\s*[+-](?!\d+(?:\.\d+)?(?:e[+-]?\d+)?$)|;\s*[=@]/.test(cell)),
    ),
  );
  expect(run).toEqual([]);
  const [header = [], first = []] = csvCells(memory.text('out/sets.csv')).map((row) => row.map(unguarded));
  const read = Object.fromEntries(header.map((key, at) => [key, first[at]]));
  const { file, person, visit, '+site': site, remark, offset, quoted } = rows[0];
  expect(read).toMatchObject({ file, person, visit, '+site': site, remark, offset, quoted });
  expect(csvRows(memory.text('out/sets.csv'))[0]).toMatchObject({ offset: '-2.5', quoted: "''=1" });
  expect(csvRows(memory.text('out/sides.csv'))).toHaveLength(1);
  expect(csvRows(memory.text('out/refused.csv'))[0]?.['file']).toBe("'+missing.csv");
});
