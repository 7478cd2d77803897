import type { ReliabilitySource } from '@surae/analysis';
import { RELIABILITY_TABLES } from '@surae/shared';
import { expect, test } from 'vitest';
import { errorWords, otherErrorWords, studiedWords } from '../../../apps/dashboard/src/result/error-words.ts';
import { JUDGING_WORDS } from '../../support/judging-words.ts';

const source = (kind: ReliabilitySource['kind'], people: number | null): ReliabilitySource => ({
  kind,
  id: 'error',
  citation: 'Somebody 2020 Journal 1:2',
  group: 'healthy, standing',
  people,
});

test('the error is named with its source and its people, one of the clinic and one of practice in words of their own', () => {
  expect(errorWords(source('published', 17))).toBe(
    'The error used: Somebody 2020 Journal 1:2 (17 people, without complaint, standing).',
  );
  expect(errorWords(source('own-clinic', 22))).toBe("The error used: this clinic's own, from 22 pairs of tests.");
  expect(errorWords(source('cautious-default', null))).toBe('The error used: Somebody 2020 Journal 1:2.');
});

test('no published group is held up as a pattern', () => {
  for (const { group } of RELIABILITY_TABLES) {
    for (const word of JUDGING_WORDS) expect(studiedWords(group)).not.toMatch(word);
  }
});

test('where the verdict hangs on the error every other one is named; where it does not, one line says so', () => {
  const others = [{ source: source('published', 17), verdict: 'cannot tell' }];
  expect(otherErrorWords(true, others)).toEqual([
    'The verdict hangs on which published error is believed: by Somebody 2020 Journal 1:2 (without complaint, standing) cannot tell.',
  ]);
  expect(otherErrorWords(false, others)).toEqual(['Every published error gives the same verdict.']);
  expect([otherErrorWords(null, others), otherErrorWords(false, [])]).toEqual([[], []]);
});
