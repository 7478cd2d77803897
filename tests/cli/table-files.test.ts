import { expect, test } from 'vitest';
import { CsvReport } from '../../apps/cli/src/report-csv.ts';
import { csvCells, csvRows } from '../support/csv-rows.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';

function written(): { memory: MemoryIo; table: (name: string) => Record<string, string>[] } {
  const memory = new MemoryIo();
  const report = new CsvReport({ folder: 'out', replace: false }, ['person', 'visit'], memory.io);
  report.add(handMadeOutcome([100, 98, 96, 60]));
  report.add(handMadeRefusal());
  report.write();
  const table = (name: string): Record<string, string>[] => csvRows(memory.text(`out/${name}`));
  return { memory, table };
}

test('one row a repetition, with the recording and the manifest before the figures', () => {
  const { table } = written();
  const rows = table('repetitions.csv');
  expect(rows).toHaveLength(4);
  expect(rows[0]).toMatchObject({
    file: 'left, first.csv',
    person: 'P1',
    visit: '2',
    side: 'left',
    placement: 'heel',
    index: '1',
    height_mm: '100',
    'criteria.height': 'pass',
    valid: 'yes',
  });
});

test('empty is not measured and zero is zero', () => {
  const [row] = written().table('repetitions.csv');
  expect(row).toMatchObject({ rise_mm: '', work_heel_j: '', period_s: '' });
  expect(written().table('sets.csv')[0]).toMatchObject({ 'count.attempted': '4', 'count.cannot_tell': '0' });
});

test('a refused recording is in its own table and in no other', () => {
  const { table } = written();
  expect(table('refused.csv')).toMatchObject([
    { file: 'bad.csv', person: 'P2', reason: 'bad.csv: there is no such file' },
  ]);
  expect(table('sets.csv')).toHaveLength(1);
  expect(table('issues.csv').map((row) => row['code'])).toEqual(['gap', 'unused-column']);
});

test('the dictionary explains every column of every table', () => {
  const { memory, table } = written();
  const entries = table('dictionary.csv');
  expect(entries.filter((entry) => entry['description'] === '')).toEqual([]);
  for (const name of ['repetitions.csv', 'sets.csv', 'issues.csv', 'refused.csv']) {
    const listed = entries.filter((entry) => entry['table'] === name).map((entry) => entry['column']);
    expect(listed).toEqual(csvCells(memory.text(`out/${name}`))[0]);
  }
  expect(entries.find((entry) => entry['column'] === 'height_mm')?.['unit']).toBe('mm');
});

test('lines end in CR LF', () => {
  const text = written().memory.text('out/sets.csv');
  expect(text.split('\r\n')).toHaveLength(3);
  expect(text.replaceAll('\r\n', '')).not.toContain('\n');
});

test('a table that is there already is never written over unasked', () => {
  const memory = new MemoryIo();
  memory.files.set('out/sets.csv', 'mine');
  expect(() => new CsvReport({ folder: 'out', replace: false }, [], memory.io)).toThrow(
    'out/sets.csv is there already',
  );
  const report = new CsvReport({ folder: 'out', replace: true }, [], memory.io);
  report.add(handMadeOutcome([100]));
  report.write();
  expect(memory.text('out/sets.csv')).not.toBe('mine');
});
