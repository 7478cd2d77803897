import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coarseLevel, rollingLevel, runningMedian } from '../../../packages/analysis/src/efforts/coarse-level.ts';
import { quantileInPlace } from '../../../packages/analysis/src/signal/order-statistics.ts';
import { runs } from '../../support/runs.ts';

test('a running median by hand; the window is cut off at the ends', () => {
  expect([...runningMedian(Float64Array.of(1, 9, 2, 3, 8), 1)]).toEqual([5, 2, 3, 3, 5.5]);
  expect([...runningMedian(Float64Array.of(4, 7), 0)]).toEqual([4, 7]);
  expect(() => runningMedian(Float64Array.of(1), -1)).toThrow('halfWindow');
});

test('a running median is the median of each window, ties and all', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 60 }),
      fc.integer({ min: 0, max: 40 }),
      (list, half) => {
        const values = Float64Array.from(list);
        const slow = values.map((_, i) => quantileInPlace(values.slice(Math.max(0, i - half), i + half + 1), 0.5));
        expect([...runningMedian(values, half)]).toEqual([...slow]);
        expect([...values]).toEqual(list);
      },
    ),
    runs(300, 20_000),
  );
});

test('blocks of 10 ms at 1000 Hz; a knock of 30 ms is gone, a gap is bridged', () => {
  const timesS = Float64Array.from({ length: 400 }, (_, i) => i / 1000 + (i >= 200 ? 0.05 : 0));
  const samples = timesS.map((timeS) => (timeS > 0.1 && timeS < 0.13 ? 200 : 10 * timeS));
  const { startS, intervalS, values } = coarseLevel({ timesS, samples, unit: 'N', sampleRateHz: 1000 }, 0.01, 0.09);
  expect([startS, intervalS, values.length]).toEqual([0.005, 0.01, 45]);
  for (let i = 0; i < values.length; i++) expect(Math.abs(values[i] - 10 * (startS + i * intervalS))).toBeLessThan(0.4);
});

test('at a low rate a block is one sample', () => {
  const timesS = Float64Array.from({ length: 80 }, (_, i) => i / 80);
  const { intervalS, values } = coarseLevel({ timesS, samples: timesS, unit: 'N', sampleRateHz: 80 }, 0.01, 0.09);
  expect([intervalS, values.length]).toEqual([1 / 80, 80]);
});

test('the rolling level lies under pulls and follows a drift', () => {
  const values = Float64Array.from({ length: 3000 }, (_, i) => i / 100 + (i % 1000 > 300 && i % 1000 < 700 ? 500 : 0));
  const level = rollingLevel(values, 2000, 0.1);
  for (let i = 0; i < 3000; i += 100) expect(Math.abs(level[i] - i / 100)).toBeLessThan(15);
  expect([...rollingLevel(Float64Array.of(5), 10, 0.1)]).toEqual([5]);
});
