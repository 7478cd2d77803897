import type { MatchedPain } from '@surae/guidance';
import { expect, test } from 'vitest';
import {
  matchedHead,
  matchedRows,
  matchedSentences,
  matchedSlope,
  unmatchedLines,
} from '../../../apps/dashboard/src/course/matched-words.ts';
import { inMarch } from '../../support/advised-person.ts';

const at = (...pains: readonly number[]): MatchedPain => ({
  exercise: 'one-leg-raise',
  leg: 'right',
  load: null,
  sets: 3,
  repetitions: 15,
  eachS: 6,
  points: pains.map((pain, i) => ({ on: inMarch(1 + 3 * i), pain })),
});

test.each<[Partial<MatchedPain>, string]>([
  [{}, 'Heel raises on one leg, right: 3 times 15, 6 s each'],
  [{ load: { value: 10, unit: 'kg' } }, 'Heel raises on one leg, right: 3 times 15, 6 s each, with 10 kg'],
  [{ eachS: null, leg: 'both' }, 'Heel raises on one leg, both legs: 3 times 15'],
  [
    { exercise: 'one-leg-hold', repetitions: 1, eachS: 45 },
    'Hold on one leg, slightly up on the toes, right: 3 times 45 s',
  ],
  [{ exercise: 'try.ten-raises', eachS: null }, 'Ten raises on one leg, before a test, right'],
])('%o is named whole', (change, head) => {
  expect(matchedHead({ ...at(1), ...change })).toBe(head);
});

test('pain that falls is said to fall with its interval, and one that rises to rise', () => {
  const [first, falls] = matchedSentences(at(8, 7, 6, 5, 4, 3, 2, 1));
  expect(first).toBe('First 8 of 10 on 1 Mar 2026, last 1 of 10 on 22 Mar 2026.');
  // one point in three days
  expect(falls).toMatch(/^Pain at this load falls by 2\.3 of 10 a week \(95 %: 2\.3 to 2\.3\), over 8 times\.$/);
  expect(matchedSentences(at(1, 2, 3, 4, 5, 6, 7, 8))[1]).toMatch(/rises by 2\.3/);
});

test('what could be either cannot be told, and neither can what was done a few times', () => {
  expect(matchedSentences(at(3, 5, 2, 4, 3, 4))[1]).toMatch(/^Cannot tell whether it moves: .* \(95 %: /);
  expect(matchedSentences(at(8, 1, 1, 1))[1]).toBe('Cannot tell whether it moves: on 4 days so far, and 5 are needed.');
  expect(matchedSlope(at(8, 1, 1, 1))).toBeNull();
});

test('what was done several times on few days cannot be told either', () => {
  const sameDay = at(8, 7, 6, 5, 4, 3).points.map(({ pain }) => ({ on: inMarch(4), pain }));
  expect(matchedSlope({ points: sameDay })).toBeNull();
  const fourDays = sameDay.map(({ pain }, i) => ({ on: inMarch(1 + Math.min(i, 3)), pain }));
  expect(matchedSentences({ ...at(), points: fourDays })[1]).toBe(
    'Cannot tell whether it moves: on 4 days so far, and 5 are needed.',
  );
});

test('the table has the newest first', () => {
  expect(matchedRows(at(5, 0))).toEqual([
    ['4 Mar 2026', '0'],
    ['1 Mar 2026', '5'],
  ]);
});

test('what stands in no line is counted by why, and nothing is said where there is none', () => {
  expect(unmatchedLines({ ownWords: 0, amounts: 0, pain: 0 })).toEqual([]);
  expect(unmatchedLines({ ownWords: 2, amounts: 1, pain: 3 }).map((line) => line.slice(-2))).toEqual([
    '2.',
    '1.',
    '3.',
  ]);
});
