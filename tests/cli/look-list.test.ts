import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import { MemoryIo } from '../support/memory-io.ts';

const NAMES = [
  '--names',
  '{person}_{visit}_{side}',
  '--names',
  '{side}-{visit}-{person}',
  '--names',
  '{person} v{visit} {side}',
];

/** A messy folder of three people, one of each way of writing. */
async function messy(): Promise<MemoryIo> {
  const memory = new MemoryIo();
  expect(await main(['simulate', '--messy', '--people', '3', '--seed', '5', '--out', 'm'], memory.io)).toBe(0);
  return memory;
}

async function look(memory: MemoryIo, ...more: string[]): Promise<number> {
  memory.out = '';
  memory.error = '';
  return main(['look', 'm/traces', '--manifest-out', 'm/visits.csv', ...more], memory.io);
}

test('every table of a folder has its row, files alike one recipe, and what cannot be told is said', async () => {
  const memory = await messy();
  expect(await look(memory, ...NAMES, '--facts', 'm/people.csv', '--set', 'time=ms')).toBe(1);
  const rows = csvRows(memory.text('m/visits.csv'));
  const told = rows.filter((row) => row['person'] !== '');
  expect(told.map((row) => [row['person'], row['visit'], row['side'], row['recipe'], row['footwear']])).toEqual([
    ['P01', '1', 'left', 'visits.recipes/1.json', 'barefoot'],
    ['P01', '2', 'left', 'visits.recipes/1.json', 'barefoot'],
    ['P02', '1', 'right', 'visits.recipes/3.json', 'barefoot'],
    ['P02', '2', 'right', 'visits.recipes/3.json', 'barefoot'],
    ['P03', '1', 'left', 'visits.recipes/4.json', 'barefoot'],
    ['P03', '2', 'left', 'visits.recipes/4.json', 'barefoot'],
  ]);
  expect(rows.filter((row) => row['person'] === '').map((row) => [row['file'], row['recipe'] !== ''])).toEqual([
    ['traces/room-1/Copy of first.csv', true],
    ['traces/room-1/broken off.csv', true],
    ['traces/ward/empty.csv', false],
    ['traces/ward/notes.txt', false],
  ]);
  expect(memory.error).toBe('Passed over, no tables by their names: 1 .jpg.\n');
  for (const said of [
    'm/visits.csv: 10 files, written in 4 ways',
    '3 files like Copy of first.csv',
    'empty.csv: expected',
  ])
    expect(memory.out).toContain(said);
  // what was made is followed: the repetitions that are true of each
  await main(['assess', '--manifest', 'm/visits.csv', '--csv', 'o'], memory.io);
  const truth = new Map(csvRows(memory.text('m/truth.csv')).map((row) => [row['file'], Number(row['repetitions'])]));
  const sets = csvRows(memory.text('o/sets.csv')).filter((row) => row['person'] !== '');
  expect(sets.map((row) => Number(row['count.attempted']))).toEqual(sets.map((row) => truth.get(row['file'])));
  expect(sets).toHaveLength(6);
});

test('a question that nobody answers leaves its files without a recipe; an answer goes only to those that ask', async () => {
  const memory = await messy();
  expect(await look(memory, ...NAMES, '--json')).toBe(1);
  const summary = JSON.parse(memory.out) as { unread: { path: string; why: string }[]; recipes: unknown[] };
  expect(summary.unread.map(({ path }) => path)).toContain('m/traces/room-2/right-1-P02.txt');
  expect(summary.unread.find(({ path }) => path.includes('room-2'))!.why).toContain('answers to time');
  expect(await look(memory, ...NAMES, '--replace', '--set', 'rate=100')).toBe(2);
  expect(memory.error).toContain('--set rate: no file asks for it');
});

test('nothing is written over, and a person of whom nothing is known is named', async () => {
  const memory = await messy();
  memory.files.set('m/people.csv', 'person,body_mass_kg\nP1,70\nP02,71\n');
  await look(memory, ...NAMES, '--facts', 'm/people.csv', '--set', 'time=ms');
  expect(memory.out).toContain('Nothing is known of:\n  P01\n  P03\n');
  expect(memory.out).toContain('Perhaps one person under two names:\n  P01, P1\n');
  const before = memory.text('m/visits.csv');
  expect(await look(memory)).toBe(2);
  expect(memory.error).toContain('m/visits.csv is there already');
  expect(memory.text('m/visits.csv')).toBe(before);
});

test('without patterns the names are left to be filled in', async () => {
  const memory = await messy();
  memory.files.delete('m/traces/ward/empty.csv');
  memory.files.delete('m/traces/ward/notes.txt');
  expect(await look(memory, '--set', 'time=ms')).toBe(0);
  expect(memory.text('m/visits.csv').split('\r\n')[0]).toBe('file,recipe');
});

test.each([
  [['--names', '{person}'], '--names says something only with --manifest-out'],
  [['--facts', 'f.csv'], '--facts says something only with --manifest-out'],
  [['--manifest-out', 'v.csv', '--recipe-out', 'r.json'], '--manifest-out makes recipes of its own'],
  [['--manifest-out', 'v.csv', '--names', '{person}{side}'], 'expected something between two columns'],
  [['--manifest-out', 'v.csv', '--facts', 'f.csv'], 'a pattern of --names with {person} is needed'],
  [['--manifest-out', ''], '--manifest-out needs the name of a file'],
])('%j cannot be followed', async (args, words) => {
  const memory = await messy();
  expect(await main(['look', 'm/traces', ...args], memory.io)).toBe(2);
  expect(memory.error).toContain(words);
});
