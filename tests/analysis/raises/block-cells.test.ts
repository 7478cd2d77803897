import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CellAverager } from '../../../packages/analysis/src/raises/block-cells.ts';
import { arbitraryTimes } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { runs } from '../../support/runs.ts';

function cellsOf(timesS: Float64Array, samples: Float64Array, rateHz: number): { timesS: number[]; means: number[] } {
  const times: number[] = [];
  const means: number[] = [];
  const averager = new CellAverager(1, rateHz, (timeS, mean) => {
    times.push(timeS);
    means.push(mean[0]);
  });
  for (let i = 0; i < timesS.length; i++) averager.push(timesS[i], [samples], i);
  averager.finish();
  return { timesS: times, means };
}

describe('means over cells', () => {
  test('a slow ramp gives its value in the middle of each cell, many samples to the cell or few', () => {
    for (const sampleRateHz of [4, 10, 1000]) {
      const timesS = Float64Array.from({ length: 2 * sampleRateHz + 1 }, (_, i) => 5 + i / sampleRateHz);
      const { timesS: middles, means } = cellsOf(timesS, timesS, 10);
      expect(middles.length).toBe(20);
      expect(middles).toBeCloseToEach(
        middles.map((_, k) => 5.05 + k / 10),
        { rtol: 1e-12, atol: 0 },
      );
      expect(means).toBeCloseToEach(middles, { rtol: 1e-12, atol: 0 });
    }
  });

  test('the mean of a cell is the area under the straight lines between samples', () => {
    // 0 up to 6 at 0.3 s, then 6 to 1 s; the area up to 0.5 s is 0.9 + 1.2, up to 1 s 3
    const timesS = Float64Array.of(0, 0.3, 0.6, 1);
    const { means } = cellsOf(timesS, Float64Array.of(0, 6, 6, 6), 2);
    expect(means).toBeCloseToEach([2.1 / 0.5, 3 / 0.5], { rtol: 1e-12, atol: 0 });
  });

  test('a wild single sample leaves no trace', () => {
    const timesS = Float64Array.from({ length: 101 }, (_, i) => i / 100);
    const wild = timesS.map((timeS, i) => (i === 40 ? 1000 : timeS));
    const { means } = cellsOf(timesS, wild, 20);
    // its neighbour stands in for it: a hundredth of the ramp, over one of the five intervals of a cell
    expect(means).toBeCloseToEach(cellsOf(timesS, timesS, 20).means, { rtol: 0, atol: 0.01 / 2 });
  });

  test('no sample and one sample fill no cell', () => {
    expect(cellsOf(new Float64Array(0), new Float64Array(0), 10).means).toEqual([]);
    expect(cellsOf(Float64Array.of(3), Float64Array.of(1), 10).means).toEqual([]);
  });

  test('law: cells are even and their number follows from the span, whatever the times', () => {
    fc.assert(
      fc.property(arbitraryTimes(2, 60), (timesS) => {
        const { timesS: middles, means } = cellsOf(timesS, timesS, 20);
        const spanS = timesS[timesS.length - 1] - timesS[0];
        expect(Math.abs(middles.length - spanS * 20)).toBeLessThan(1.001);
        expect(means.every((mean) => mean >= timesS[0] && mean <= timesS[timesS.length - 1])).toBe(true);
      }),
      runs(60, 1000),
    );
  });
});
