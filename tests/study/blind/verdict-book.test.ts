import { expect, test } from 'vitest';
import { itemsLeft, readVerdicts } from '../../../packages/study/src/blind/verdict-book.ts';
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
  [{ step: 'erase' }, 'step: expected one of count, verdict, lock, open, got "erase"'],
])('a step that cannot be is refused: %#', (step, message) => {
  expect(refusal(() => bookAfter(key, [step as typeof COUNT]))).toContain(`bad-file: entry 1.${message}`);
});
