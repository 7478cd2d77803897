import type { Report, SeatedLoad } from '@surae/analysis';
import { expect, test } from 'vitest';
import { maximumWords, pairWords } from '../../apps/cli/src/seated-words.ts';

const seated: SeatedLoad = {
  massKg: 40,
  massUKg: 0.2,
  percentOfBodyMass: 50,
  repetitions: 10,
  repetitionsLow: 9,
  repetitionsHigh: 11,
  maximum: { target: 12, massKg: 37.6, lowKg: 35.7, highKg: 39, reason: null },
};
const reportOf = (load: SeatedLoad | null) => ({ seated: load }) as unknown as Report;

test('the pair of load and repetitions, and the load for twelve with its range', () => {
  expect(pairWords(reportOf(seated))).toMatch(
    /^40\.0 kg on the knee \(50 % of body mass\), 10 \(9-11\) valid repetitions\./,
  );
  expect(maximumWords(reportOf(seated))).toMatch(/^for 12 repetitions: about 38 kg \(36 to 39 kg\)\. .*from memory/);
});

test('where none is named, the reason is', () => {
  const maximum = { target: 12, massKg: null, lowKg: null, highKg: null, reason: 'count-out-of-range' } as const;
  expect(maximumWords(reportOf({ ...seated, maximum }))).toMatch(/none\. Named only from 8 to 15/);
});

test('a standing set has no such lines, an unknown load no pair', () => {
  expect([pairWords(reportOf(null)), maximumWords(reportOf(null))]).toEqual(['', '']);
  expect(pairWords(reportOf({ ...seated, massKg: null }))).toBe('');
});
