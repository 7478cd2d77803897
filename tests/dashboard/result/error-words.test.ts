import type { ReliabilitySource } from '@surae/analysis';
import { RELIABILITY_TABLES } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  errorWords,
  otherErrorWords,
  ownUnusedWords,
  ratioErrorWords,
  studiedWords,
} from '../../../apps/dashboard/src/result/error-words.ts';
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
  expect(errorWords(source('own-clinic', 30))).toBe(
    "The error used: this clinic's own, from 30 pairs of tests (Somebody 2020 Journal 1:2).",
  );
  expect(errorWords(source('own-clinic', 29))).toBe(
    "The error used: the upper bound of this clinic's own, from 29 pairs of tests (Somebody 2020 Journal 1:2); from 30 on it is the figure itself.",
  );
  expect(errorWords(source('cautious-default', null))).toBe('The error used: Somebody 2020 Journal 1:2.');
});

test('no published group is held up as a pattern', () => {
  for (const entry of RELIABILITY_TABLES) {
    for (const word of JUDGING_WORDS) expect(studiedWords(entry)).not.toMatch(word);
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

test('an own error that is not used says why; none, and one that is used, say nothing', () => {
  const own = {
    standardError: 40,
    standardErrorUpper80: 45,
    scale: 'natural',
    unit: 'N',
    source: { id: 'own', citation: 'ours', group: 'own people' },
  } as const;
  expect(ownUnusedWords(undefined, 'N')).toEqual([]);
  expect(ownUnusedWords({ ...own, pairs: 15 }, 'N')).toEqual([]);
  expect(ownUnusedWords({ ...own, pairs: 14 }, 'N')[0]).toMatch(/from 14 pairs of tests, is shown and not used/);
  expect(ownUnusedWords({ ...own, pairs: 15 }, 'N.m')[0]).toMatch(/told in another unit/);
});

test('a ratio names repeated ratios of the clinic where there are any, used or not', () => {
  const independent = { from: 'sides-independent', source: null, logU: 0.1 } as const;
  expect(ratioErrorWords({ ...independent, own: 'none', pairs: null })).toEqual([]);
  expect(ratioErrorWords({ ...independent, own: 'too-few-pairs', pairs: 9 })).toHaveLength(2);
  const used = { from: 'own-ratios', own: 'used', pairs: 30, source: source('own-clinic', 30), logU: 0.04 } as const;
  expect(ratioErrorWords(used)[2]).toBe(
    "This clinic's own ratios of the legs: 30 pairs of visits (Somebody 2020 Journal 1:2).",
  );
});
