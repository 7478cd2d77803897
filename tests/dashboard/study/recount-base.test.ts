import { expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import { recountBase } from '../../../apps/dashboard/src/study/recount-base.ts';
import { RecountDesk } from '../../../apps/dashboard/src/study/recount-desk.ts';
import { csvRows } from '../../support/csv-rows.ts';
import { type MemoryIo, MemoryLog } from '../../support/memory-io.ts';
import { studyFolder } from '../../support/study-folder.ts';
import { assessedFolder, sessionOf, shelvedStudy } from '../../support/study-session.ts';

const trials = assessedFolder(studyFolder());

async function run(memory: MemoryIo, ...args: string[]): Promise<number> {
  memory.out = '';
  memory.error = '';
  return main(['study', 'study.json', ...args], memory.io);
}

const ADA = ['--key', 'ada.key', '--verdicts', 'ada.jsonl'];

/** The folder of a rater on the command line. */
async function forAda(): Promise<MemoryIo> {
  const memory = studyFolder();
  expect(await run(memory, '--manifest', 'm.csv', '--blind', 'ada', '--out', 'for-ada', '--key', 'ada.key')).toBe(0);
  return memory;
}

function fillCounts(memory: MemoryIo, counts: Readonly<Record<string, number>>): void {
  const rows = csvRows(memory.text('for-ada/counts.csv'));
  const lines = rows.map(({ item }) => `${item},${counts[item] ?? ''}`);
  memory.files.set('for-ada/counts.csv', ['item,count', ...lines, ''].join('\n'));
}

/** Counts an item by going from peak to peak. */
async function countFirst(desk: RecountDesk): Promise<{ item: string; count: number }> {
  const session = desk.begin('ada');
  await session.show();
  const { item } = session;
  for (let before = -1; before !== session.cursorS; ) {
    before = session.cursorS;
    session.toPeak(1);
    if (before !== session.cursorS) await session.say('yes');
  }
  const count = session.counting;
  await session.done();
  return { item, count };
}

test('a list begun on the page goes on with the command line, and comes back locked', async () => {
  const study = await shelvedStudy(studyFolder(), trials);
  const desk = new RecountDesk(recountBase(await sessionOf(study)));
  const memory = await forAda();
  expect(desk.keyText('ada')).toBe(memory.text('ada.key'));
  const { item, count } = await countFirst(desk);
  const { trial } = desk.begin('ada').key.items[0];
  expect(count).toBe(Number(/\d+/.exec(trial)![0]));
  memory.logs.set('ada.jsonl', new MemoryLog(Buffer.from(desk.verdictsText('ada'))));

  const others = desk.begin('ada').key.items.slice(1);
  fillCounts(memory, Object.fromEntries(others.map((one, at) => [one.item, 3 + at])));
  expect(await run(memory, '--take-in', 'for-ada', ...ADA)).toBe(0);
  expect(memory.out).toContain('Every item has a count.');
  // numbers of what was shown are no numbers of marks
  const shown = memory.text('for-ada/verdicts.csv');
  memory.files.set('for-ada/verdicts.csv', shown.replace(new RegExp(`(${item},1,[\\d.]+,)`), '$1no'));
  expect(await run(memory, '--take-in', 'for-ada', ...ADA)).toBe(2);
  expect(memory.error).toMatch(new RegExp(`verdicts\\.csv, row \\d+: ${item} was counted by marks of ada`));
  expect(await run(memory, '--lock', ...ADA, '--by', 'ada')).toBe(0);
  const lock = /is locked: ([0-9a-f]{64})/.exec(memory.out)![1];

  expect(await desk.takeInVerdicts('ada', memory.logText('ada.jsonl'), 'ada.jsonl')).toBe(others.length + 1);
  // kept: the same after a reload
  const again = new RecountDesk(recountBase(await sessionOf(study)));
  expect(again.states()[0]).toMatchObject({ rater: 'ada', state: 'locked', left: 0, lock });
  await again.open(['ada'], 'cyd', '2026-04-02', 'ada has locked');
  const { pairs } = again.agreement()!;
  expect(pairs.map(({ kind }) => kind)).toEqual(['within-rater', 'with-automatic']);
  const marked = again.agreement()!.lists[1].trials.find((one) => one.trial === trial)!;
  // every mark of the page stands at a top of the machine
  expect([marked.both.length, marked.firstAlone.length, marked.secondAlone.length]).toEqual([count, 0, 0]);
});

test('a list begun on the command line goes on on the page', async () => {
  const desk = new RecountDesk(recountBase(await sessionOf(await shelvedStudy(studyFolder(), trials))));
  const memory = await forAda();
  const [first] = csvRows(memory.text('for-ada/counts.csv'));
  fillCounts(memory, { [first['item']]: 5 });
  expect(await run(memory, '--take-in', 'for-ada', ...ADA)).toBe(0);
  expect(await desk.takeInKey(memory.text('ada.key'), 'ada.key')).toBe('ada');
  expect(await desk.takeInVerdicts('ada', memory.logText('ada.jsonl'), 'ada.jsonl')).toBe(1);
  const { item } = await countFirst(desk);
  expect(item).not.toBe(first['item']);
  memory.logs.set('ada.jsonl', new MemoryLog(Buffer.from(desk.verdictsText('ada'))));
  expect(await run(memory, '--lock', ...ADA, '--by', 'ada')).toBe(0);
  expect(memory.out).toContain('8 of 10 items have no count.');
});

test('what a rater is shown is a line alone: neither name nor time of the day nor leg is in it', async () => {
  const session = await sessionOf(await shelvedStudy(studyFolder(), trials));
  const base = recountBase(session);
  const line = await base.trace(base.trials()[0].sha256);
  expect(Object.keys(line).sort()).toEqual(['decimals', 'label', 'timesS', 'unit', 'values']);
  expect([line.label, line.timesS[0] < 1]).toEqual(['Heel height', true]);
});
