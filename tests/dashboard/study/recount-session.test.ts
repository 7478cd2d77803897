import { type BlindEntry, bookWith, emptyBook, entryLine, readVerdicts } from '@surae/study';
import { expect, test } from 'vitest';
import { RecountSession } from '../../../apps/dashboard/src/study/recount-session.ts';
import { bookAfter, keyOf } from '../../support/blind-raters.ts';
import { raisedLine } from '../../support/recount-line.ts';

const key = keyOf('ada', 4);
const names = key.items.map(({ item }) => item);

/** A list that is kept, as a store keeps it. */
class Kept {
  readonly entries: BlindEntry[];
  fails = false;

  constructor(entries: readonly BlindEntry[] = []) {
    this.entries = [...entries];
  }

  /** A session as it begins after a reload. */
  async begin(): Promise<RecountSession> {
    const session = new RecountSession({
      key,
      book: bookWith(emptyBook(key), key, this.entries),
      keep: async (entries) => {
        await Promise.resolve();
        if (this.fails) throw new Error('the disk is full');
        this.entries.push(...entries);
      },
      trace: () => Promise.resolve(raisedLine(5)),
    });
    await session.show();
    return session;
  }

  get steps(): string[] {
    return this.entries.map(({ says }) => says.step);
  }
}

const toldOf = (session: RecountSession) => session.marks.map(({ atS, verdict }) => [atS, verdict]);

test('from peak to peak: a verdict puts a mark at the cursor, and the count of those that count goes on to the next item', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  for (const verdict of ['yes', 'yes', 'no', 'cannot_tell'] as const) {
    session.toPeak(1);
    await session.say(verdict);
  }
  expect(toldOf(session)).toEqual([
    [1, 'yes'],
    [3, 'yes'],
    [5, 'no'],
    [7, 'cannot_tell'],
  ]);
  expect(session.counting).toBe(2);
  const { left } = session;
  await session.done();
  expect([session.item, session.left, session.news]).toEqual([names[1], left - 1, { code: 'counted', count: 2 }]);
  expect(kept.steps).toEqual(['mark', 'mark', 'mark', 'mark', 'count']);
  const book = readVerdicts(kept.entries.map(entryLine).join(''), key);
  expect([book.counts.get(names[0]), [...book.marks.get(names[0])!.values()]]).toEqual([2, [1, 3, 5, 7]]);
});

test('near a mark a verdict is about that mark, and the same one writes nothing', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  session.moveTo(3);
  await session.say('yes');
  session.moveTo(3.2);
  await session.say('no');
  expect([toldOf(session), session.news.code]).toEqual([[[3, 'no']], 'changed']);
  await session.say('no');
  expect([kept.steps, session.news.code]).toEqual([['mark', 'verdict'], 'same']);
  session.moveTo(3.3);
  await session.say('no');
  expect(session.marks).toHaveLength(2);
});

test('a mark is taken away and a step taken back; both stay in the list', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  session.moveTo(3);
  await session.say('yes');
  await session.takeAway();
  expect([session.marks, session.news.code]).toEqual([[], 'taken']);
  await session.undo();
  expect(toldOf(session)).toEqual([[3, 'yes']]);
  await session.undo();
  await session.undo();
  expect([session.marks, session.news.code, kept.steps]).toEqual([
    [],
    'nothing-to-undo',
    ['mark', 'unmark', 'undo', 'undo'],
  ]);
  await session.takeAway();
  expect(session.news.code).toBe('nothing-here');
  await session.say('yes');
  expect(toldOf(session)).toEqual([[3, 'yes']]);
});

test('of another item nothing is taken back', async () => {
  const session = await new Kept().begin();
  session.toPeak(1);
  await session.say('yes');
  await session.done();
  await session.undo();
  expect(session.news.code).toBe('nothing-to-undo');
  await session.step(-1);
  await session.undo();
  expect([session.item, session.confirmed, session.marks.length]).toEqual([names[0], null, 1]);
});

test('a reload in the midst loses nothing: it goes on at the same item with the same marks', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  session.toPeak(1);
  await session.say('yes');
  await session.done();
  session.toPeak(1);
  await session.say('cannot_tell');
  const again = await kept.begin();
  expect([again.item, toldOf(again), again.left]).toEqual([names[1], [[1, 'cannot_tell']], session.left]);
  await again.undo();
  expect(again.marks).toEqual([]);
});

test('a change after the count asks for the count again', async () => {
  const session = await new Kept().begin();
  session.toPeak(1);
  await session.say('yes');
  await session.done();
  await session.step(-1);
  session.toPeak(1);
  await session.say('no');
  expect([session.confirmed, session.left]).toEqual([null, names.length]);
});

test('nothing marked is asked about once, and then counts as none', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  await session.done();
  expect([session.item, session.news.code, kept.steps]).toEqual([names[0], 'none-marked', []]);
  await session.done();
  expect([session.item, kept.steps]).toEqual([names[1], ['count']]);
});

test('what cannot be kept does not stand, and says so', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  session.moveTo(3);
  kept.fails = true;
  await session.say('yes');
  expect([session.marks, session.news.code]).toEqual([[], 'not-kept']);
  kept.fails = false;
  await session.say('yes');
  expect([toldOf(session), kept.steps]).toEqual([[[3, 'yes']], ['mark']]);
});

test('keys that come quickly are each about the place that the cursor had', async () => {
  const session = await new Kept().begin();
  session.moveTo(7);
  await session.say('no');
  const said = [1, 3].map((timeS) => {
    session.moveTo(timeS);
    return session.say('yes');
  });
  session.moveTo(7);
  await Promise.all(said);
  expect(toldOf(session)).toEqual([
    [1, 'yes'],
    [3, 'yes'],
    [7, 'no'],
  ]);
});

test('what was filled in as a table stands until the first mark', async () => {
  const steps = [
    { step: 'count', item: names[0], count: 12 },
    { step: 'verdict', item: names[0], repetition: 1, verdict: 'yes' },
  ] as const;
  const session = await new Kept(bookAfter(key, steps).entries).begin();
  expect(session.item).toBe(names[1]);
  await session.step(-1);
  expect([session.isFromTable, session.confirmed]).toEqual([true, 12]);
  session.toPeak(1);
  await session.say('yes');
  expect([session.isFromTable, session.confirmed, session.counting]).toEqual([false, null, 1]);
});

test('the lock closes the list for every further step', async () => {
  const kept = new Kept();
  const session = await kept.begin();
  await session.lock('ada', '2026-04-01');
  expect(session.book.lock).toBe(kept.entries[0].hash);
  session.toPeak(1);
  await session.say('yes');
  expect([session.marks, session.news.code, kept.steps]).toEqual([[], 'not-kept', ['lock']]);
});
