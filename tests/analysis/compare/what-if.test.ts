import {
  type Detection,
  defaultSettings,
  InputError,
  type Report,
  robustness,
  scoresAtLeast,
  whatIf,
  withParameters,
} from '@surae/analysis';
import { FLOOR, type Protocol } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';
import { detectedSet, PLAIN_REQUEST } from '../../support/detected-set.ts';

// few draws: the bounds of the counts are not what is tested
const judging = { ...defaultSettings().judging, draws: 400 };
const extras = { commonRelativeU: 0, blockDifferences: [] };

function withShare(share: number): Protocol {
  const made = withParameters(FLOOR, { heightFraction: share });
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

const variantsOf = (shares: readonly number[]) =>
  shares.map((share) => ({ name: `from ${share}`, protocol: withShare(share) }));

function under(detection: Detection, shares: readonly number[], least: number) {
  const conclude = (report: Report) => scoresAtLeast(report.count, least);
  return whatIf(detection, PLAIN_REQUEST, variantsOf(shares), judging, extras, conclude);
}

const fading = Array.from({ length: 25 }, (_, i) => 0.1 * (1 - 0.02 * i));

test('set B by hand: under each criterion the repetitions that reach that share of 9.9 cm score', () => {
  // 0.1 (1 - 0.02 (k - 1)) >= share x 0.099: k <= 21, 16, 11 and 6, without a measuring error
  const { cases } = under(detectedSet({ heightsM: fading, uM: 0 }), [0.6, 0.7, 0.8, 0.9], 15);
  expect(cases.map(({ count }) => count.scored)).toEqual([21, 16, 11, 6]);
  expect(cases.map(({ conclusion }) => conclusion)).toEqual(['yes', 'yes', 'no', 'no']);
  expect(cases.map(({ name }) => name)).toEqual(['from 0.6', 'from 0.7', 'from 0.8', 'from 0.9']);
  expect(new Set(cases.map(({ fingerprint }) => fingerprint)).size).toBe(4);
  expect(cases.map(({ end }) => [end.rule, end.atRepetition])).toEqual([
    ['consecutive-faults', 23],
    ['consecutive-faults', 18],
    ['consecutive-faults', 13],
    ['consecutive-faults', 8],
  ]);
});

test('a conclusion that stands, one that turns, one that nobody can tell', () => {
  const detection = detectedSet({ heightsM: fading, uM: 0 });
  expect(under(detection, [0.6, 0.7, 0.8, 0.9], 5).robust).toBe('yes');
  expect(under(detection, [0.6, 0.7, 0.8, 0.9], 24).robust).toBe('yes');
  expect(under(detection, [0.6, 0.7, 0.8, 0.9], 15).robust).toBe('no');
  const uncertain = detectedSet({ heightsM: fading, uM: 0.01 });
  const found = under(uncertain, [0.6, 0.7], 17);
  expect(found.cases.map(({ conclusion }) => conclusion)).toContain('cannot_tell');
  expect(found.robust).toBe('cannot_tell');
});

test('each count stands within its interval', () => {
  const { cases } = under(detectedSet({ heightsM: fading, uM: 0.005 }), [0.6, 0.7, 0.8, 0.9], 15);
  for (const { count } of cases) {
    expect(count.scoredLow <= count.scored && count.scored <= count.scoredHigh).toBe(true);
    expect(count.attempted).toBe(25);
  }
});

describe('40 repetitions of 10 cm that lose 1.2 % each, 5 mm of noise, two misses in a row end the test', () => {
  // simulated elsewhere with a reference of 10 cm: 32, 24, 20, 16 and 8 repetitions, standard deviation 2.5. Here the reference is
  // the best two of the first, which noise makes higher: 30.9, 23.1, 19.0, 14.7 and 6.5, always a little fewer
  test('the mean scores over 40 such sets lie within one standard deviation of them', () => {
    const shares = [0.6, 0.7, 0.75, 0.8, 0.9];
    const sums = shares.map(() => 0);
    const sets = 40;
    const random = createRandom(7);
    for (let set = 0; set < sets; set++) {
      const heightsM = Array.from({ length: 40 }, (_, i) => 0.1 * (1 - 0.012 * i) + 0.005 * gaussian(random));
      const { cases } = under(detectedSet({ heightsM, uM: 0.005 }), shares, 0);
      cases.forEach(({ count }, i) => (sums[i] += count.scored));
    }
    const means = sums.map((sum) => sum / sets);
    [32, 24, 20, 16, 8].forEach((expected, i) => {
      expect(Math.abs(means[i] - expected), `share ${shares[i]}: ${means[i]}`).toBeLessThan(2.5);
    });
  }, 60_000);
});

test('robustness of conclusions', () => {
  expect(robustness(['yes', 'yes'])).toBe('yes');
  expect(robustness(['no', 'no'])).toBe('yes');
  expect(robustness(['yes', 'no'])).toBe('no');
  expect(robustness(['yes', 'cannot_tell', 'no'])).toBe('no');
  expect(robustness(['yes', 'cannot_tell'])).toBe('cannot_tell');
  expect(robustness(['cannot_tell', 'cannot_tell'])).toBe('cannot_tell');
  expect(() => robustness([])).toThrow(InputError);
});

test('at least so many: by the bounds of the count, and never no where a cap ended the set', () => {
  const bounds = (scoredLow: number, scoredHigh: number, censored = false) => ({ scoredLow, scoredHigh, censored });
  expect(scoresAtLeast(bounds(20, 22), 20)).toBe('yes');
  expect(scoresAtLeast(bounds(17, 19), 20)).toBe('no');
  expect(scoresAtLeast(bounds(19, 21), 20)).toBe('cannot_tell');
  expect(scoresAtLeast(bounds(17, 19, true), 20)).toBe('cannot_tell');
  expect(scoresAtLeast(bounds(20, 20, true), 20)).toBe('yes');
  expect(() => scoresAtLeast(bounds(1, 2), -1)).toThrow(InputError);
});

test('one variant is no range, and two of one name cannot be told apart', () => {
  const detection = detectedSet({ heightsM: fading });
  expect(() => under(detection, [0.7], 15)).toThrow(InputError);
  expect(() => under(detection, [0.7, 0.7], 15)).toThrow(InputError);
});
