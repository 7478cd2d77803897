import { readBundle, unzipped } from '@surae/exchange';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { rowsInMemory, WHOLE_ROW } from '../support/compared-manifest.ts';
import { csvRows } from '../support/csv-rows.ts';
import type { MemoryIo } from '../support/memory-io.ts';

const ROWS = [
  { ...WHOLE_ROW, person: 'Ottilie Marsh', visit: 1, side: 'left', file: 'left-4.csv' },
  { ...WHOLE_ROW, person: 'Ottilie Marsh', visit: 1, side: 'right', file: 'right-5.csv' },
];

async function exported(
  options: readonly string[],
  rows: readonly (typeof ROWS)[number][] = ROWS,
): Promise<{ memory: MemoryIo; code: number }> {
  const memory = rowsInMemory(rows, { 'secret.txt': 'sixteen letters and more\n', 'short.txt': 'short' });
  return { memory, code: await main(['export', '--manifest', 'm.csv', ...options], memory.io) };
}

function bytesOf(memory: MemoryIo, path: string): Uint8Array {
  const content = memory.files.get(path);
  if (!(content instanceof Uint8Array)) throw new Error(`${path} was not written`);
  return content;
}

test('a list becomes a bundle that can be read again, and says that people are named', async () => {
  const { memory, code } = await exported(['--out', 'o.zip', '--samples', '--raw']);
  expect(code).toBe(0);
  expect(memory.out).toMatch(/^o\.zip: 1 people, 1 visits, 2 trials in \d+ files\nPeople are named in it/);
  const read = readBundle(unzipped(bytesOf(memory, 'o.zip'), 'o.zip'));
  const people = read.find(({ name }) => name === 'tables/people.csv');
  expect(people?.is === 'table' && people.table.rows[0][0]).toBe('Ottilie Marsh');
  expect(read.map(({ name }) => name)).toEqual(expect.arrayContaining(['raw/t0001.csv', 'samples/t0002.csv']));
});

test('a folder holds the same files as the zip', async () => {
  const { memory: zip } = await exported(['--out', 'o.zip', '--tables', 'csv,json-lines,parquet']);
  const { memory: folder } = await exported(['--out', 'o', '--tables', 'csv,json-lines,parquet']);
  for (const { name, bytes } of unzipped(bytesOf(zip, 'o.zip'), 'o.zip'))
    expect(bytesOf(folder, `o/${name}`)).toEqual(bytes);
  expect(folder.folders.has('o/tables')).toBe(true);
});

test('without names: the same secret gives the same keys, and a drawn one others; nobody is named', async () => {
  const person = async (...options: string[]): Promise<string> => {
    const { memory, code } = await exported(['--out', 'o', '--without-names', ...options]);
    expect(code).toBe(0);
    expect(memory.out).toContain('Taken out: ');
    const text = [...memory.files]
      .filter(([path]) => path.startsWith('o/'))
      .map(([, bytes]) => new TextDecoder().decode(bytes as Uint8Array))
      .join('\n');
    expect(text).not.toMatch(/Ottilie|Marsh|2026-03-01|left-4\.csv/);
    return csvRows(new TextDecoder().decode(bytesOf(memory, 'o/tables/people.csv')))[0]['person'];
  };
  const seeded = await person('--secret-file', 'secret.txt');
  expect(seeded).toMatch(/^P-[0-9a-f]{12}$/);
  expect(await person('--secret-file', 'secret.txt')).toBe(seeded);
  expect(await person()).not.toBe(seeded);
});

test('a recording that is refused stands in the table with its reason, and the exit code tells', async () => {
  const { memory, code } = await exported(['--out', 'o'], [ROWS[0], { ...ROWS[1], file: 'gone.csv' }]);
  expect(code).toBe(1);
  expect(memory.error).toBe('Refused, 1 of 2:\n  gone.csv: there is no such file\n');
  const rows = csvRows(new TextDecoder().decode(bytesOf(memory, 'o/tables/trials.csv')));
  expect(rows.map(({ status, reason }) => [status, reason])).toEqual([
    ['assessed', ''],
    ['refused', 'gone.csv: there is no such file'],
  ]);
});

test('what cannot be followed is said before anything is assessed or written', async () => {
  const memory = rowsInMemory(ROWS, { 'o.zip': 'there', 'short.txt': 'short' });
  expect(await main(['export', '--manifest', 'm.csv', '--out', 'o.zip'], memory.io)).toBe(2);
  expect(memory.error).toContain('o.zip is there already: name another, or add --replace');
  expect(
    await main(
      ['export', '--manifest', 'm.csv', '--out', 'p', '--without-names', '--secret-file', 'short.txt'],
      memory.io,
    ),
  ).toBe(2);
  expect(memory.error).toContain('short.txt: expected a secret of at least 16 characters, got 5');
  expect([...memory.files.keys()].some((path) => path.startsWith('p'))).toBe(false);
  expect(await main(['export', '--manifest', 'm.csv', '--out', 'o.zip', '--replace'], memory.io)).toBe(0);
});

test('a letter says of the legs what surae assess says of them', async () => {
  const rows = [
    { ...WHOLE_ROW, person: 'P1', visit: '1', side: 'left', order: 'first', file: 'l-12.csv' },
    {
      ...WHOLE_ROW,
      person: 'P1',
      visit: '1',
      side: 'right',
      order: 'second',
      rest_s: 150,
      symptomatic: 'mild',
      file: 'r-8.csv',
    },
  ];
  const memory = rowsInMemory(rows);
  expect(await main(['export', '--manifest', 'm.csv', '--letters', '--out', 'o'], memory.io)).toBe(0);
  expect(await main(['assess', '--manifest', 'm.csv', '--csv', 'a'], memory.io)).toBe(0);
  const [path] = [...memory.files.keys()].filter((name) => /^o\/letters\/.*\.txt$/.test(name));
  const letter = new TextDecoder().decode(bytesOf(memory, path)).replaceAll('\u00A0', ' ');
  const [side] = csvRows(memory.text('a/sides.csv'));
  const percent = (key: string): string => String(Math.round(100 * Number(side[key])));
  expect(side['kind']).toBe('ratio');
  expect(letter).toContain(
    `Right leg over left leg, heel raises: ${percent('ratio.value')} % (95 % interval ${percent('ratio.low')} to ${percent('ratio.high')} %).`,
  );
  expect(letter).toContain('Whether the right leg does less than the other: ');
});
