import type { PairOfCounts } from '@surae/study';
import { expect, test } from 'vitest';
import { agreementLines, namesOf } from '../../../apps/dashboard/src/study/agreement-lines.ts';

const bounded = (value: number) => ({ value, low: value - 1, high: value + 1 });

const PAIR: PairOfCounts = {
  kind: 'between-raters',
  first: 'ada',
  second: 'ben',
  sets: 9,
  same: 5,
  withinOne: 8,
  bias: 0.25,
  icc: { kind: 'given', value: 0.9, interval: { low: 0.6, high: 0.97 } },
  sem: { kind: 'given', value: 0.5, interval: null },
  limits: { lower: bounded(-1.1), upper: bounded(1.6), bias: bounded(0.25) } as PairOfCounts['limits'],
  repetitions: 80,
  firstAlone: 2,
  secondAlone: 0,
  kappa: { kind: 'given', value: 0.8, interval: { low: 0.7, high: 0.9 } },
  observed: 0.95,
};

test('a sentence stands for each figure, with its interval', () => {
  expect(agreementLines(PAIR)).toEqual([
    'Counts of 9 recordings: 5 the same, 8 apart by one at most.',
    'On average ada counts 0.25 more.',
    'Of such pairs of counts, 95 in 100 are expected to differ by -1.1 to 1.6.',
    'ICC(2,1) 0.90 (0.60 to 0.97): the share of what sets counts apart that lies between the recordings.',
    'Standard error of one count: 0.50 (no interval) repetitions.',
    'Kappa 0.80 (0.70 to 0.90) of 80 repetitions that both marked: 1 is always the same verdict, 0 as often as by chance.',
    'The interval takes repetitions as independent and is rather too narrow.',
    'Marked by one alone: 2 by ada, 0 by ben.',
  ]);
});

test('what is not given says why', () => {
  const few = { kind: 'not-given', reason: 'too-few' } as const;
  const alike = { kind: 'not-given', reason: 'all-alike' } as const;
  const none = { ...PAIR, limits: null, firstAlone: 0 };
  expect(agreementLines({ ...none, sets: 3, bias: -2, icc: few, sem: few, kappa: few }).slice(1)).toEqual([
    'On average ada counts 2.00 fewer.',
    'No ICC: fewer than 5 recordings have both counts.',
    'No kappa: fewer than 10 repetitions have both verdicts.',
  ]);
  expect(agreementLines({ ...none, bias: 0, icc: alike, sem: alike, kappa: alike }).slice(1)).toEqual([
    'On average both count the same.',
    'No limits: all differences are the same.',
    'No ICC: the counts do not differ.',
    'No standard error: no two counts of a recording scatter.',
    'No kappa: all verdicts are the same word.',
  ]);
  expect(agreementLines({ ...none, sets: 0, bias: null, kappa: few })[0]).toBe('No recording has a count from both.');
});

test('within a rater the second time is held against the first', () => {
  const pair = { ...PAIR, kind: 'within-rater', second: 'ada, second showing' } as const;
  expect(namesOf(pair)).toEqual({ title: 'ada with themself', first: 'the first time', second: 'the second time' });
  expect(agreementLines(pair)[1]).toBe('On average the second time gives 0.25 fewer.');
  expect(agreementLines(pair).at(-1)).toBe('Marked once alone: 2 the first time, 0 the second time.');
  expect(namesOf({ ...PAIR, kind: 'with-automatic', second: 'automatic' }).title).toBe('ada and the machine');
});
