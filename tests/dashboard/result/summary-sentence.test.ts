import { expect, test } from 'vitest';
import { attemptedSentence, summarySentence } from '../../../apps/dashboard/src/result/summary-sentence.ts';
import { madeReport, madeSet, madeVisit, sureCount } from '../../support/made-visit.ts';

const left22 = madeSet('left', madeReport('left', { ...sureCount(22), scoredLow: 21, scoredHigh: 24 }));
const right25 = madeSet('right', madeReport('right', sureCount(25)));

test('both legs stand in one sentence, left before right whatever the order of the sets, bounds only where they leave room', () => {
  const sentence = 'Left did 22 (between 21 and 24), right did 25.';
  expect(summarySentence(madeVisit(left22, right25))).toBe(sentence);
  expect(summarySentence(madeVisit(right25, left22))).toBe(sentence);
});

test('a set that ended for pain tells how far it came, by what was tried and not by what met the rules', () => {
  const counts = { ...sureCount(12), scored: 9, scoredLow: 8, scoredHigh: 10, valid: 9, low: 11, high: 12 };
  const sore = madeSet('left', madeReport('left', counts, 'pain'));
  expect(summarySentence(madeVisit(sore, right25))).toBe(
    'Left stopped for pain at 12 (between 11 and 12), right did 25.',
  );
});

test('every way to end has its own words', () => {
  const said = (...args: Parameters<typeof madeReport>): string =>
    summarySentence(madeVisit(madeSet('left', madeReport(...args)), right25)).replace(', right did 25.', '');
  expect(said('left', sureCount(8), 'technical')).toBe('Left was ended early at 8');
  expect(said('left', sureCount(8), 'safety')).toBe('Left was ended early at 8');
  expect(said('left', sureCount(60), 'cap')).toBe('Left did at least 60');
  expect(said('left', { ...sureCount(60), censored: true }, 'fatigue')).toBe('Left did at least 60');
  expect(said('left', sureCount(10), 'fixed-count-done')).toBe('Left did 10 of the number that was set');
  expect(said('left', sureCount(10), null)).toBe('Left did 10, and why it ended was not recorded');
  expect(said('left', sureCount(0), 'fatigue')).toBe('On the left no heel raise was found');
});

test('a leg that was not tested, or has no result yet, is named and not left out', () => {
  expect(summarySentence(madeVisit(right25))).toBe('Left was not tested, right did 25.');
  expect(summarySentence(madeVisit(madeSet('left', null), right25))).toBe('Left has no result yet, right did 25.');
  expect(summarySentence(madeVisit({ ...left22, setAside: true }, right25))).toBe('Left was not tested, right did 25.');
});

test('how the number came about: all met, some met, some after the end', () => {
  expect(attemptedSentence('left', madeReport('left', sureCount(22)))).toBe(
    'Left: all 22 that were tried met every rule that could be judged.',
  );
  expect(attemptedSentence('right', madeReport('right', { attempted: 25, valid: 22, scored: 22 }))).toBe(
    'Right: 25 tried, 22 of them met every rule that could be judged.',
  );
  expect(attemptedSentence('right', madeReport('right', { attempted: 25, valid: 22, scored: 20 }))).toBe(
    'Right: 25 tried, 22 of them met every rule that could be judged. 2 of those came after the test had ended and do not count.',
  );
  expect(attemptedSentence('right', madeReport('right', sureCount(0)))).toBeUndefined();
});

test('no sentence says deficit, weak, fail, normal, significant or injured', () => {
  const reasons = ['fatigue', 'pain', 'other-stop', 'technical', 'cap', 'fixed-count-done', null] as const;
  for (const reason of reasons) {
    const visit = madeVisit(madeSet('left', madeReport('left', sureCount(7), reason)), right25);
    expect(summarySentence(visit)).not.toMatch(/deficit|weak|fail|normal|significant|injured|only|%/i);
  }
});
