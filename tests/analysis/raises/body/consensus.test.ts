import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';
import { agreedRepetitions } from '../../../../packages/analysis/src/raises/body/consensus.ts';
import { correlate } from '../../../../packages/analysis/src/raises/body/correlations.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { whiten } from '../../../../packages/analysis/src/raises/body/whitening.ts';

const bank = templateBank([{ fromS: 1, toS: 1, durationStep: 1, holdShares: [0], fallRatios: [1] }], 20);
const none = new Float64Array(0);
const timeOf = (cell: number): number => cell / 20;

/** A signal with repetitions of 50 mm begun at cells 20, 60 and 100, and paths that see what they are told to see. */
function agreedOf(paths: readonly (readonly number[])[], present = new Uint8Array(140).fill(1)) {
  const signal = new Float64Array(140);
  for (const cell of [20, 60, 100]) {
    bank.templates[0].acceleration.forEach((value, i) => (signal[cell + i] += 0.05 * value));
  }
  const whitened = whiten(signal, present, none);
  return agreedRepetitions(
    {
      rhythm: priorRhythm(bodyDefaults, 3.5, 0.01),
      bank,
      whitened,
      correlations: correlate(whitened, bank, none),
      paths: paths.map((cells) => ({
        repetitions: cells.map((cell) => ({ cell, template: 0, follows: true })),
        other: [],
      })),
      evidence: 100,
      likelihood: 100,
    },
    timeOf,
  );
}

test('what every path holds is agreed by all, at its time, with the rise that lies in the signal', () => {
  const { repetitions, counts } = agreedOf([
    [20, 60, 100],
    [20, 60, 100],
  ]);
  expect(counts).toEqual([3, 3]);
  expect(repetitions.map(({ share, startSpreadS, gapShare }) => [share, startSpreadS, gapShare])).toEqual(
    Array(3).fill([1, 0, 0]),
  );
  // templates of one second: tops half a second after their starts
  expect(repetitions.map(({ topS }) => topS)).toEqual([1.5, 3.5, 5.5]);
  for (const { ownRiseM } of repetitions) expect(ownRiseM).toBeCloseTo(0.05, 5);
});

test('a repetition that a quarter of the paths hold has that share, and times spread as the paths do', () => {
  const { repetitions, counts } = agreedOf([[20, 60], [21, 60], [19, 60], [20]]);
  expect(counts).toEqual([2, 2, 2, 1]);
  expect(repetitions.map(({ share }) => share)).toEqual([1, 0.75]);
  // 1.00, 1.05, 0.95 and 1.00 s: mean 1.00 s, standard deviation sqrt(0.005 / 3)
  expect(repetitions[0].startS).toBeCloseTo(1, 9);
  expect(repetitions[0].startSpreadS).toBeCloseTo(Math.sqrt(0.005 / 3), 9);
});

test('a path that holds nothing near gives nothing from afar', () => {
  const { repetitions } = agreedOf([[20], [20], [100]]);
  expect(repetitions.map(({ topS, share }) => [topS, share])).toEqual([
    [1.5, 2 / 3],
    [5.5, 1 / 3],
  ]);
});

test('two neighbours of one path are two repetitions, however close their tops', () => {
  const { repetitions } = agreedOf([
    [20, 40],
    [20, 40],
    [20, 40],
  ]);
  expect(repetitions.map(({ topS, share }) => [topS, share])).toEqual([
    [1.5, 1],
    [2.5, 1],
  ]);
});

test('what fewer than three in a hundred paths hold is left out, no path gives nothing', () => {
  const lonely = Array.from({ length: 50 }, (_, i) => (i === 0 ? [20, 100] : [20]));
  expect(agreedOf(lonely).repetitions.map(({ share }) => share)).toEqual([1]);
  expect(agreedOf([])).toEqual({ repetitions: [], counts: [] });
});

test('a gap takes its part of the energy and makes the rise less certain', () => {
  const present = new Uint8Array(140).fill(1).fill(0, 60, 70);
  const { repetitions } = agreedOf([[20, 60]], present);
  const [whole, half] = repetitions;
  expect(Math.abs(whole.gapShare)).toBeLessThan(1e-6);
  expect(half.gapShare).toBeGreaterThan(0.3);
  expect(half.gapShare).toBeLessThan(0.7);
  expect(half.ownVariance / whole.ownVariance).toBeCloseTo(1 / (1 - half.gapShare), 6);
  expect(half.ownRiseM).toBeCloseTo(0.05, 5);
});
