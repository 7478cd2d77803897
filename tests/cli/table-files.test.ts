import { parquetMetadata, parquetReadObjects } from 'hyparquet';
import { expect, test } from 'vitest';
import { outcomeRows } from '../../apps/cli/src/outcome-rows.ts';
import { resultTables } from '../../apps/cli/src/result-tables.ts';
import { TableFiles } from '../../apps/cli/src/table-files.ts';
import { asWritten } from '../../apps/cli/src/written-rows.ts';
import { csvCells, csvRows } from '../support/csv-rows.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { writtenTables } from '../support/written-tables.ts';

const written = () => writtenTables([handMadeOutcome([100, 98, 96, 60]), handMadeRefusal()], ['person', 'visit']);

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
  const tables = resultTables({ carried: [], tests: new Set(), compares: false });
  const asked = { csv: 'out', parquet: undefined };
  expect(() => new TableFiles({ ...asked, replace: false }, tables, memory.io)).toThrow(
    'out/sets.csv is there already',
  );
  const files = new TableFiles({ ...asked, replace: true }, tables, memory.io);
  files.add(asWritten(outcomeRows(handMadeOutcome([100]), [])));
  expect(memory.text('out/sets.csv')).toBe('mine');
  files.place();
  expect(csvRows(memory.text('out/sets.csv'))).toHaveLength(1);
});

test('until all tables are whole none has its name, and one that is given up leaves nothing', () => {
  const memory = new MemoryIo();
  const tables = resultTables({ carried: [], tests: new Set(), compares: false });
  const files = new TableFiles({ csv: 'out', parquet: 'out', replace: false }, tables, memory.io);
  files.add(asWritten(outcomeRows(handMadeOutcome([100]), [])));
  expect([...memory.files.keys()].every((name) => name.endsWith('.part'))).toBe(true);
  files.abandon();
  expect([...memory.files.keys()]).toEqual([]);
});

test('as Parquet the tables hold the cells of the text, with units; one without rows has no file, and an old one goes', async () => {
  const memory = new MemoryIo();
  memory.files.set('out/refused.parquet', 'old');
  const tables = resultTables({ carried: ['person'], tests: new Set(), compares: false });
  const files = new TableFiles({ csv: 'out', parquet: 'out', replace: true }, tables, memory.io);
  files.add(asWritten(outcomeRows(handMadeOutcome([100, 98, 96, 60]), ['person'])));
  expect(files.place()).toContain('out/refused.parquet: no rows, no file');
  expect(memory.files.has('out/refused.parquet')).toBe(false);
  const bytes = memory.files.get('out/repetitions.parquet') as Uint8Array;
  const buffer = bytes.slice().buffer;
  const rows = await parquetReadObjects({ file: buffer });
  const text = csvRows(memory.text('out/repetitions.csv'));
  expect(rows).toHaveLength(4);
  rows.forEach((row, at) => {
    for (const [key, cell] of Object.entries(row)) expect(cell === null ? '' : String(cell)).toBe(text[at][key]);
  });
  const told = parquetMetadata(buffer).key_value_metadata?.find(({ key }) => key === 'surae.units');
  expect((JSON.parse(told!.value!) as Record<string, string>)['height_mm']).toBe('mm');
});
