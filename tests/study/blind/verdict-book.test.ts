import { expect, test } from 'vitest';
import {
  bookWith,
  emptyBook,
  itemsLeft,
  nextSteps,
  readVerdicts,
  type VerdictBook,
} from '../../../packages/study/src/blind/verdict-book.ts';
import { StudyError } from '../../../packages/study/src/errors.ts';
import { bookAfter, keyOf, LOCK, OPEN, verdictText } from '../../support/blind-raters.ts';

const key = keyOf('ada', 4);
const [first, second] = key.items.map(({ item }) => item);
const COUNT = { step: 'count', item: first, count: 12 } as const;
const VERDICT = { step: 'verdict', item: first, repetition: 3, verdict: 'no' } as const;

function refusal(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof StudyError) return `${error.code}: ${error.message}`;
    throw error;
  }
  return 'none';
}

test('counts and verdicts are read; a later one about the same takes the place of the earlier, which stays', () => {
  const book = bookAfter(key, [COUNT, VERDICT, { ...COUNT, count: 11 }, { ...VERDICT, verdict: 'cannot_tell' }]);
  expect(book.counts.get(first)).toBe(11);
  expect(book.verdicts.get(first)?.get(3)).toBe('cannot_tell');
  expect(book.entries.map(({ says }) => says.step)).toEqual(['count', 'verdict', 'count', 'verdict']);
  expect([book.lock, book.isOpened, book.afterOpening]).toEqual([null, false, []]);
  expect(itemsLeft(book, key)).toEqual(key.items.map(({ item }) => item).slice(1));
});

test('after the lock nothing is said, and the names are opened by a step of its own', () => {
  expect(refusal(() => bookAfter(key, [COUNT, LOCK, VERDICT]))).toBe(
    'out-of-turn: entry 3: expected nothing but the opening of the names after the lock, got a verdict',
  );
  expect(refusal(() => bookAfter(key, [COUNT, LOCK, LOCK]))).toMatch(/^out-of-turn: entry 3/);
  const book = bookAfter(key, [COUNT, LOCK, OPEN]);
  expect(book.isOpened).toBe(true);
  expect(book.lock).toBe(book.entries[1].hash);
  expect(book.afterOpening).toEqual([]);
});

test('a file that was changed after the lock is found, even where the change was written as a whole line', () => {
  const text = verdictText(key, [COUNT, VERDICT, LOCK]);
  expect(refusal(() => readVerdicts(text.replace('"count":12', '"count":13'), key))).toMatch(/^broken-chain: entry 1/);
  const [one, , three] = text.split(/(?<=\n)/);
  expect(refusal(() => readVerdicts(`${one}${three}`, key))).toMatch(/^broken-chain: entry 2/);
  // somebody who writes the whole list anew gets another lock
  const anew = bookAfter(key, [{ ...COUNT, count: 13 }, VERDICT, LOCK]);
  expect(anew.lock).not.toBe(readVerdicts(text, key).lock);
});

test('verdicts belong to one rater and one key: with another they are no list', () => {
  const text = verdictText(key, [COUNT, LOCK]);
  expect(refusal(() => readVerdicts(text, keyOf('ben', 4)))).toMatch(/^broken-chain: entry 1/);
  const swapped = { ...key, items: key.items.map((one) => ({ ...one, sha256: 'another' })) };
  expect(refusal(() => readVerdicts(text, swapped))).toMatch(/^broken-chain: entry 1/);
});

const MARK = { step: 'mark', item: first, repetition: 1, atS: 2.5, verdict: 'yes' } as const;
const SECOND = { ...MARK, repetition: 2, atS: 4.5, verdict: 'no' } as const;

test('marks of a rater have times and verdicts, and end the numbers that were shown', () => {
  const book = bookAfter(key, [VERDICT, MARK, SECOND, { ...VERDICT, repetition: 2, verdict: 'cannot_tell' }]);
  expect(book.marks.get(first)).toEqual(
    new Map([
      [1, 2.5],
      [2, 4.5],
    ]),
  );
  expect(book.verdicts.get(first)).toEqual(
    new Map([
      [1, 'yes'],
      [2, 'cannot_tell'],
    ]),
  );
  const less = bookAfter(key, [MARK, SECOND, { step: 'unmark', item: first, repetition: 1 }]);
  expect([less.marks.get(first), less.verdicts.get(first)]).toEqual([new Map([[2, 4.5]]), new Map([[2, 'no']])]);
  expect(less.entries).toHaveLength(3);
});

test('a change of marks takes the count back until it is said again; numbers as shown do not', () => {
  expect(bookAfter(key, [MARK, COUNT]).counts.get(first)).toBe(12);
  for (const change of [
    SECOND,
    { ...VERDICT, repetition: 1 },
    { step: 'unmark', item: first, repetition: 1 } as const,
  ]) {
    const book = bookAfter(key, [MARK, COUNT, change]);
    expect([book.counts.has(first), itemsLeft(book, key).includes(first)]).toEqual([false, true]);
  }
  expect(bookAfter(key, [COUNT, VERDICT]).counts.get(first)).toBe(12);
});

test('an undo takes back the last step that stands, one after the other, and stays in the list', () => {
  const steps = [MARK, SECOND, COUNT, { step: 'undo', entry: 3 }, { step: 'undo', entry: 2 }] as const;
  const book = bookAfter(key, steps);
  expect([book.marks.get(first), book.counts.has(first), book.entries.length]).toEqual([new Map([[1, 2.5]]), false, 5]);
  expect(book.standing?.entry).toBe(1);
  // what was taken back may come again under its number
  expect(
    bookAfter(key, [...steps, { ...SECOND, atS: 5 }])
      .marks.get(first)
      ?.get(2),
  ).toBe(5);
  const none = bookAfter(key, [...steps, { step: 'undo', entry: 1 }]);
  expect([none.standing, none.marks.size, none.verdicts.size]).toEqual([null, 0, 0]);
  expect(refusal(() => bookAfter(key, [MARK, SECOND, { step: 'undo', entry: 1 }]))).toBe(
    'out-of-turn: entry 3: expected an undo of entry 2, got of 1',
  );
  expect(refusal(() => bookAfter(key, [{ step: 'undo', entry: 1 }]))).toMatch(/expected an undo of nothing/);
  expect(refusal(() => bookAfter(key, [MARK, LOCK, { step: 'undo', entry: 1 }]))).toMatch(/^out-of-turn: entry 3/);
});

test.each([
  [[MARK, { ...MARK, atS: 9 }], 'repetition: expected a number above 1, got 1'],
  [[MARK, { ...VERDICT, repetition: 7 }], 'repetition: expected one of the marks 1, got 7'],
  [[COUNT, { step: 'unmark', item: first, repetition: 1 }], 'repetition: expected a mark of the item, got 1'],
  [[COUNT, { ...MARK, atS: -1 }], 'atS: expected seconds from 0 on, got -1'],
])('a mark that cannot be is refused: %#', (steps, message) => {
  expect(refusal(() => bookAfter(key, steps as (typeof MARK)[]))).toContain(`bad-file: entry 2.${message}`);
});

test('a list that grows comes to the same as one that is read, and the one before stays as it was', () => {
  const steps = [MARK, SECOND, COUNT, { step: 'undo', entry: 3 }, { ...VERDICT, repetition: 2 }, LOCK, OPEN] as const;
  let grown = emptyBook(key);
  const seen: VerdictBook[] = [];
  for (const step of steps) {
    seen.push(grown);
    grown = bookWith(grown, key, nextSteps(grown, key, [step]));
  }
  expect(grown).toEqual(bookAfter(key, steps));
  seen.forEach((book, at) => {
    expect(book).toEqual(bookAfter(key, steps.slice(0, at)));
  });
  expect(refusal(() => nextSteps(grown, key, [COUNT]))).toMatch(/^out-of-turn: entry 8/);
});

test('an undo after an early opening marks the item too', () => {
  expect(bookAfter(key, [MARK, OPEN, { step: 'undo', entry: 1 }]).afterOpening).toEqual([first]);
});

test('what is said after an early opening is marked', () => {
  const book = bookAfter(key, [COUNT, OPEN, { ...COUNT, item: second }, LOCK]);
  expect(book.afterOpening).toEqual([second]);
  expect(book.lock).not.toBe(null);
});

test.each([
  [{ ...COUNT, item: 'item-999' }, 'item: expected one of the '],
  [{ ...COUNT, count: 1.5 }, 'count: expected a whole number from 0 on, got 1.5'],
  [{ ...COUNT, count: -1 }, 'count: expected a whole number from 0 on, got -1'],
  [{ ...VERDICT, repetition: 0 }, 'repetition: expected a whole number from 1 on, got 0'],
  [{ ...VERDICT, verdict: 'maybe' }, 'verdict: expected one of yes, no, cannot_tell, got "maybe"'],
  [{ ...LOCK, by: '' }, 'by: expected a text, got ""'],
  [{ step: 'erase' }, 'step: expected one of count, verdict, mark, unmark, undo, lock, open, got "erase"'],
])('a step that cannot be is refused: %#', (step, message) => {
  expect(refusal(() => bookAfter(key, [step as typeof COUNT]))).toContain(`bad-file: entry 1.${message}`);
});
