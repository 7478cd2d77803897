import { expect, test } from 'vitest';
import { COMPARISON_TABLES } from '../../apps/cli/src/comparison-tables.ts';
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
  for (const name of COMPARISON_TABLES) {
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
