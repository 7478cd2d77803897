import { expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import { madeFiles } from '../../../apps/dashboard/src/study/session-results.ts';
import { STUDY_CHANGED } from '../../../apps/dashboard/src/study/study-session.ts';
import type { MemoryIo } from '../../support/memory-io.ts';
import { STUDY_ROWS, studyFolder } from '../../support/study-folder.ts';
import { plainTrials, sessionOf, shelvedStudy } from '../../support/study-session.ts';

const trials = plainTrials();

/** What the command line writes of the same files. */
async function written(folder: MemoryIo, ...more: string[]): Promise<[string, string][]> {
  expect(await main(['study', 'study.json', '--manifest', 'm.csv', '--out', 'o', ...more], folder.io)).toBe(0);
  const names = [...folder.files.keys()].filter((path) => path.startsWith('o/'));
  return names.map((path) => [path.slice(2), folder.text(path)]);
}

test('a session makes the bytes that surae study makes', async () => {
  const session = await sessionOf(await shelvedStudy(studyFolder(), trials));
  const made = new Map(session.results().outputs.map(({ name, text }) => [name, text]));
  const files = await written(studyFolder());
  expect([...made.keys()].sort()).toEqual(files.map(([name]) => name).sort());
  for (const [name, text] of files) expect([name, made.get(name) === text]).toEqual([name, true]);
});

test('decisions and counts of a session are files that the command line reads, and the result is the same', async () => {
  const session = await sessionOf(await shelvedStudy(studyFolder(), trials));
  let told = 0;
  session.addEventListener(STUDY_CHANGED, () => (told += 1));
  const at = '2026-03-02';
  const trial = 'cycling-10.csv';
  await session.decide({ trial, decision: 'exclude', reason: 'late', by: 'ada', at, why: 'began late' });
  const key = await session.begin('ada');
  expect(key.items.map((one) => one.trial)).not.toContain(trial);
  await session.count(key, [
    ...key.items.map(({ item }, place) => ({ step: 'count', item, count: place }) as const),
    { step: 'lock', by: 'ada', at },
  ]);
  expect(madeFiles(session).map(({ name }) => name)).toEqual(['decisions.jsonl']);
  await session.count(key, [{ step: 'open', by: 'ben', at, why: 'the counts are in' }]);
  expect(told).toBe(4);
  const folder = studyFolder();
  for (const { name, text } of madeFiles(session)) folder.files.set(name, text);
  const { command } = session.results().origin;
  const files = await written(folder, ...command.split(' ').slice(5, -2));
  const made = new Map(session.results().outputs.map(({ name, text }) => [name, text]));
  expect(made.has('agreement.csv')).toBe(true);
  expect([...made.keys()].sort()).toEqual(files.map(([name]) => name).sort());
  for (const [name, text] of files) expect([name, made.get(name) === text]).toEqual([name, true]);
});

test('a decision that was not declared is refused, and nothing is kept of it', async () => {
  const study = await shelvedStudy(studyFolder(), trials);
  const session = await sessionOf(study);
  const says = {
    trial: 'cycling-10.csv',
    decision: 'exclude',
    reason: 'tired',
    by: 'ada',
    at: null,
    why: 'x',
  } as const;
  await expect(session.decide(says)).rejects.toThrow('"tired", which was not declared');
  expect((await sessionOf(study)).decisions).toEqual([]);
});

test('a recording that is not there is a row with its reason', async () => {
  const folder = studyFolder([...STUDY_ROWS, { ...STUDY_ROWS[0], file: 'gone.csv' }]);
  folder.files.delete('gone.csv');
  const session = await sessionOf(await shelvedStudy(folder));
  expect(session.refusals).toEqual([{ trial: 'gone.csv', reason: 'gone.csv: there is no such file' }]);
  expect(session.rows.at(-1)).toMatchObject({ status: 'to-decide', flags: ['refused'] });
});

test('a recording that is written in another way is read by the recipe that its row names, as surae study reads it', async () => {
  const folder = studyFolder();
  const recipes = ['recipe', 'own.recipe.json', 'none.recipe.json'];
  const lines = folder.text('m.csv').trimEnd().split(/\r?\n/);
  folder.files.set('m.csv', lines.map((line, at) => `${line},${recipes[at] ?? ''}\n`).join(''));
  const samples = folder.text('cycling-8.csv').split(/\r?\n/).slice(1).join('\n');
  folder.files.set('cycling-8.csv', `Zeit [s];Ferse [mm]\n${samples.replaceAll(',', ';')}`);
  expect(await main(['look', 'cycling-8.csv', '--recipe-out', 'own.recipe.json'], folder.io)).toBe(0);
  const session = await sessionOf(await shelvedStudy(folder));
  expect(session.refusals).toEqual([
    {
      trial: 'cycling-10.csv',
      reason: 'cycling-10.csv: the recipe none.recipe.json cannot be read: there is no such file',
    },
  ]);
  expect(session.rows[0]).toMatchObject({ status: 'include', primary: 8 });
  expect(session.trials[0]?.course?.of).toBe('height');
  expect(await main(['study', 'study.json', '--manifest', 'm.csv', '--out', 'o'], folder.io)).toBe(1);
  const { outputs } = session.results();
  expect(session.content.inputs.map(({ file }) => file)).toEqual(['study.json', 'm.csv', 'own.recipe.json']);
  for (const { name, text } of outputs) expect([name, text === folder.text(`o/${name}`)]).toEqual([name, true]);
});

test('a list of decisions that the command line added to is gone on with, and another one is refused', async () => {
  const study = await shelvedStudy(studyFolder(), plainTrials());
  const session = await sessionOf(study);
  const says = { decision: 'open', reason: null, by: 'ada', at: null, why: 'look' } as const;
  await session.decide({ ...says, trial: 'cycling-10.csv' });
  const folder = studyFolder();
  folder.files.set('d', session.decisionsText);
  const decide = ['--decide', 'walking-3.csv=exclude:late', '--by', 'ben', '--why', 'began late'];
  expect(await main(['study', 'study.json', '--manifest', 'm.csv', '--decisions', 'd', ...decide], folder.io)).toBe(0);
  // the command puts its line at the end of the file
  const list = folder.text('d') + folder.logText('d');
  expect(await session.takeDecisions(list, 'd')).toBe(1);
  expect(session.rows[4]).toMatchObject({ status: 'exclude', reasons: ['late'] });
  expect((await sessionOf(study)).decisionsText).toBe(list);
  expect(await session.takeDecisions(list, 'd')).toBe(0);
  // one that is shorter, or that went another way, would lose what is here
  const other = await sessionOf(await shelvedStudy(studyFolder(), plainTrials()));
  await other.decide({ ...says, trial: 'walking-4.csv' });
  for (const text of ['', other.decisionsText]) {
    await expect(session.takeDecisions(text, 'd')).rejects.toThrow('d, entry 1: expected a list that goes on');
  }
  expect(session.decisions).toHaveLength(2);
});
