import { defaultSettings, InputError, type Trace } from '@surae/analysis';
import { expect, test } from 'vitest';
import { blockDifferences, provisionalRaises } from '../../../packages/analysis/src/assess/block-differences.ts';
import { detectedSet } from '../../support/detected-set.ts';

const { raises, motion } = detectedSet({ heightsM: Array<number>(4).fill(0.1) });
const provisional = (tops: readonly number[]) =>
  tops.map((topS) => ({ topS, startS: topS - 0.9, endS: topS + 0.9, heightM: 0.1 }));

test('the same tops make no difference', () => {
  expect(blockDifferences(raises, provisional([3, 5, 7, 9]), 0.04)).toEqual([]);
});

test('a top that moved by more than the rule, one that only the block pass has, one that only the final pass has', () => {
  expect(blockDifferences(raises, provisional([1, 3.03, 5.05, 9]), 0.04)).toEqual([
    { kind: 'only-block', repetition: null, finalTopS: null, blockTopS: 1 },
    { kind: 'top-moved', repetition: 2, finalTopS: 5, blockTopS: 5.05 },
    { kind: 'only-final', repetition: 3, finalTopS: 7, blockTopS: null },
  ]);
});

test('two provisional tops in one repetition: the nearer is it, the other is listed', () => {
  expect(blockDifferences(raises, provisional([2.6, 3.01, 5, 7, 9]), 0.04)).toEqual([
    { kind: 'only-block', repetition: null, finalTopS: null, blockTopS: 2.6 },
  ]);
});

test('nothing against nothing is no difference', () => {
  expect(blockDifferences([], [], 0.04)).toEqual([]);
});

test('a smooth recording of the heel is counted alike by block and final pass', () => {
  const timesS = Float64Array.from(motion.heightM, (_, k) => k / 100);
  const trace: Trace = {
    groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples: motion.heightM }] }],
  };
  const found = provisionalRaises(trace, 'heel', undefined, defaultSettings().block);
  expect(blockDifferences(raises, found, 0.04)).toEqual([]);
  expect(() => provisionalRaises(trace, 'platform', undefined, defaultSettings().block)).toThrow(InputError);
});
