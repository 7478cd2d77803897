import { readRecording } from '@surae/records';
import { expect, test } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { csvRows } from '../support/csv-rows.ts';
import type { MemoryIo } from '../support/memory-io.ts';
import { FOLDER_STUDY, STUDY_ROWS, studyFolder } from '../support/study-folder.ts';

async function run(memory: MemoryIo, ...args: string[]): Promise<number> {
  memory.out = '';
  memory.error = '';
  return main(['study', 'study.json', ...args], memory.io);
}

const blind = (memory: MemoryIo, rater: string, ...more: string[]): Promise<number> =>
  run(memory, '--manifest', 'm.csv', '--blind', rater, '--out', `for-${rater}`, '--key', `${rater}.key`, ...more);

const rater = (name: string): string[] => ['--key', `${name}.key`, '--verdicts', `${name}.jsonl`];

interface Key {
  readonly items: { item: string; trial: string; showing: number }[];
}

const keyOf = (memory: MemoryIo, name: string): Key => JSON.parse(memory.text(`${name}.key`)) as Key;

/** Fills in every count that the file name tells, and yes for every repetition, as a spreadsheet with semicolons would save it. */
function fillIn(memory: MemoryIo, name: string, more = 0): void {
  const counts = keyOf(memory, name).items.map(({ item, trial }) => `${item};${Number(/\d+/.exec(trial)![0]) + more}`);
  memory.files.set(`for-${name}/counts.csv`, ['item;count', ...counts, ''].join('\n'));
  const verdicts = csvRows(memory.text(`for-${name}/verdicts.csv`));
  const rows = verdicts.map((row) => `${row['item']};${row['repetition']};${row['at_s']};yes`);
  memory.files.set(`for-${name}/verdicts.csv`, ['item;repetition;at_s;verdict', ...rows, ''].join('\n'));
}

test('a rater gets recordings that tell nothing of whose they are, and the same again for the same study', async () => {
  const memory = studyFolder();
  expect(await blind(memory, 'ada')).toBe(0);
  expect(memory.out).toContain('for-ada: 10 recordings for ada, 2 of them a second time');
  const { items } = keyOf(memory, 'ada');
  const shown = [...memory.files.keys()].filter((path) => path.startsWith('for-ada/'));
  expect(shown).toHaveLength(12);
  for (const path of shown) expect(`${path} ${memory.text(path)}`).not.toMatch(/cycling|walking|left|person|arm/);
  for (const { item, trial } of items) {
    const own = readRecording(new TextEncoder().encode(memory.text(`for-ada/items/${item}.csv`)));
    const was = readRecording(new TextEncoder().encode(memory.text(trial)));
    const [{ timesS, channels }] = own.groups;
    expect(timesS[0]).toBe(0);
    expect(timesS).toHaveLength(was.groups[0].timesS.length);
    expect(channels[0].samples).toEqual(was.groups[0].channels[0].samples);
    const rows = csvRows(memory.text('for-ada/verdicts.csv')).filter((row) => row['item'] === item);
    expect(rows.map((row) => row['repetition'])).toEqual(
      Array.from({ length: Number(/\d+/.exec(trial)![0]) }, (_, at) => String(at + 1)),
    );
  }
  const again = studyFolder([...STUDY_ROWS].reverse());
  await blind(again, 'ada');
  expect(again.text('ada.key')).toBe(memory.text('ada.key'));
  expect(again.text('for-ada/verdicts.csv')).toBe(memory.text('for-ada/verdicts.csv'));
  await blind(again, 'ben');
  expect(keyOf(again, 'ben').items.map(({ trial }) => trial)).not.toEqual(items.map(({ trial }) => trial));
});

test('what is filled in is taken in, locked, opened, and held against itself, the other and the machine', async () => {
  const memory = studyFolder();
  for (const [name, more] of [
    ['ada', 0],
    ['ben', 1],
  ] as const) {
    await blind(memory, name);
    fillIn(memory, name, more);
    expect(await run(memory, '--take-in', `for-${name}`, ...rater(name))).toBe(0);
    expect(memory.out).toContain('Every item has a count.');
    const taken = memory.logText(`${name}.jsonl`);
    expect(await run(memory, '--take-in', `for-${name}`, ...rater(name))).toBe(0);
    expect([memory.out.includes(': 0 taken in'), memory.logText(`${name}.jsonl`)]).toEqual([true, taken]);
  }
  const results = ['--manifest', 'm.csv', '--out', 'o', ...rater('ada'), ...rater('ben')];
  expect(await run(memory, ...results)).toBe(2);
  expect(memory.error).toContain('ada: expected locked verdicts and opened names, got verdicts that are not locked');
  for (const name of ['ada', 'ben']) {
    expect(await run(memory, '--open', ...rater(name), '--by', 'cyd', '--why', 'done')).toBe(2);
    expect(memory.error).toContain(`${name}.jsonl is not locked`);
    expect(await run(memory, '--lock', ...rater(name), '--by', name)).toBe(0);
    const lock = /is locked: ([0-9a-f]{64})/.exec(memory.out)![1];
    expect(memory.logText(`${name}.jsonl`)).toContain(lock);
    expect(await run(memory, '--open', ...rater(name), '--by', 'cyd', '--on', '2026-04-02', '--why', 'done')).toBe(0);
  }
  expect(await run(memory, ...results)).toBe(0);
  expect(
    csvRows(memory.text('o/agreement.csv')).map((row) => [row['kind'], row['sets'], row['bias'], row['icc_not_given']]),
  ).toEqual([
    ['within-rater', '2', '0', 'too-few'],
    ['within-rater', '2', '0', 'too-few'],
    ['between-raters', '8', '-1', ''],
    ['with-automatic', '8', '0', ''],
    ['with-automatic', '8', '1', ''],
  ]);
  expect(memory.out).toMatch(/ada and ben: 0 of 8 counts the same, ICC 0\.9\d \(/);
  const { command } = JSON.parse(memory.text('o/reproduce.json')) as { command: string };
  expect(command).toContain('--verdicts ada.jsonl --key ada.key --verdicts ben.jsonl --key ben.key');
  // after the lock nothing is taken in, and a change of the file is found
  fillIn(memory, 'ada', 5);
  expect(await run(memory, '--take-in', 'for-ada', ...rater('ada'))).toBe(2);
  expect(memory.error).toMatch(
    /ada\.jsonl, entry \d+: expected nothing but the opening of the names after the lock, got a count/,
  );
  memory.files.set('ben.jsonl', memory.logText('ben.jsonl').replace('"count":11', '"count":12'));
  expect(await run(memory, ...results, '--replace')).toBe(2);
  expect(memory.error).toMatch(/ben\.jsonl, entry \d+: expected the hash /);
});

test('a cell that says something else is refused with its place, and nothing is taken in', async () => {
  const memory = studyFolder();
  await blind(memory, 'ada');
  fillIn(memory, 'ada');
  const counts = memory.text('for-ada/counts.csv');
  memory.files.set('for-ada/counts.csv', counts.replace(/;\d+/, ';twelve'));
  expect(await run(memory, '--take-in', 'for-ada', ...rater('ada'))).toBe(2);
  expect(memory.error).toContain('for-ada/counts.csv, row 2, column "count": expected a whole number, got "twelve"');
  memory.files.set('for-ada/counts.csv', counts);
  memory.files.set('for-ada/verdicts.csv', memory.text('for-ada/verdicts.csv').replace(';yes', ';fine'));
  expect(await run(memory, '--take-in', 'for-ada', ...rater('ada'))).toBe(2);
  expect(memory.error).toContain('column "verdict": expected one of yes, no, cannot_tell, or nothing, got "fine"');
  expect(memory.logs.has('ada.jsonl')).toBe(false);
});

test('refused before anything is written: a rater that was not declared, a key that is there, another test', async () => {
  const memory = studyFolder(STUDY_ROWS, FOLDER_STUDY, { 'ada.key': 'there' });
  expect(await blind(memory, 'eve')).toBe(2);
  expect(memory.error).toContain('expected one of ada, ben, got "eve"');
  expect(await blind(memory, 'ada')).toBe(2);
  expect(memory.error).toContain('ada.key is there already');
  expect([...memory.files.keys()].some((path) => path.startsWith('for-'))).toBe(false);
  expect(await blind(memory, 'ada', '--replace')).toBe(0);
});
