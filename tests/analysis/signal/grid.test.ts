import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gridOver, medianRateHz, resample } from '../../../packages/analysis/src/signal/grid.ts';
import { arbitraryTimes } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

describe('sampling rate', () => {
  test('is one over the median interval, whatever a lost packet adds', () => {
    expect(medianRateHz(Float64Array.of(0, 0.25, 0.5, 0.75, 5, 5.25))).toBe(4);
  });

  test('of an hour at 250 Hz with a lost packet in every second is that of all its intervals', () => {
    const timesS = Float64Array.from({ length: 900_000 }, (_, i) => (i + 5 * Math.floor(i / 250)) / 250);
    const intervals = timesS.slice(1).map((timeS, i) => timeS - timesS[i]);
    const middle = intervals.sort()[Math.floor(intervals.length / 2)];
    expect(Math.abs(medianRateHz(timesS) * middle - 1)).toBeLessThan(1e-9);
  });

  test('needs two samples and rising times', () => {
    expect(() => medianRateHz(Float64Array.of(0))).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => medianRateHz(Float64Array.of(1, 1, 1))).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});

describe('the grid over sample times', () => {
  test('holds both ends', () => {
    expect(gridOver(Float64Array.of(2, 2.5, 4), 2)).toEqual({ startS: 2, sampleRateHz: 2, count: 5 });
  });

  test('does not lose the last sample to a rounding error', () => {
    const timesS = Float64Array.from({ length: 1001 }, (_, i) => i * 0.01);
    expect(gridOver(timesS, medianRateHz(timesS)).count).toBe(1001);
  });

  test('of a single sample is that sample', () => {
    expect(gridOver(Float64Array.of(7), 100)).toEqual({ startS: 7, sampleRateHz: 100, count: 1 });
    expect(() => gridOver(new Float64Array(0), 100)).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => gridOver(Float64Array.of(7), 0)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});

describe('a signal on a regular grid', () => {
  test('lies on the straight lines between samples and holds the ends', () => {
    const grid = { startS: 0, sampleRateHz: 2, count: 7 };
    const resampled = resample(Float64Array.of(0.5, 1, 2), Float64Array.of(10, 20, 0), grid);
    expect(Array.from(resampled)).toEqual([10, 10, 20, 10, 0, 0, 0]);
  });

  test('of one sample is constant, and an empty grid is empty', () => {
    expect(
      Array.from(resample(Float64Array.of(1), Float64Array.of(9), { startS: 0, sampleRateHz: 1, count: 3 })),
    ).toEqual([9, 9, 9]);
    expect(resample(Float64Array.of(1), Float64Array.of(9), { startS: 0, sampleRateHz: 1, count: 0 }).length).toBe(0);
  });

  test('agrees with numpy.interp on uneven times', () => {
    interface Given {
      timesS: number[];
      samples: number[];
      startS: number;
      sampleRateHz: number;
      count: number;
    }
    const { input, expected, ...tolerance } = readReference<Given, number[]>('grid.resample');
    const resampled = resample(Float64Array.from(input.timesS), Float64Array.from(input.samples), input);
    expect(resampled).toBeCloseToEach(expected, tolerance);
  });

  test('law: a straight line in time comes back on the line', () => {
    fc.assert(
      fc.property(arbitraryTimes(2, 60), fc.integer({ min: 1, max: 500 }), (timesS, sampleRateHz) => {
        const grid = gridOver(timesS, sampleRateHz);
        const line = (timeS: number): number => 3 - 0.5 * timeS;
        const resampled = resample(timesS, timesS.map(line), grid);
        const expected = Float64Array.from({ length: grid.count }, (_, i) => line(grid.startS + i / sampleRateHz));
        // the grid may reach beyond the last sample by its rounding slack
        expect(resampled).toBeCloseToEach(expected, { rtol: 0, atol: 1e-5 });
      }),
      runs(60, 1000),
    );
  });

  test('arrays of different length and bad grids are refused', () => {
    const times = Float64Array.of(0, 1);
    const grid = { startS: 0, sampleRateHz: 1, count: 2 };
    expect(() => resample(times, Float64Array.of(1), grid)).toThrow(
      expect.objectContaining({ code: 'length-mismatch' }),
    );
    expect(() => resample(new Float64Array(0), new Float64Array(0), grid)).toThrow(
      expect.objectContaining({ code: 'too-short' }),
    );
    expect(() => resample(times, times, { ...grid, sampleRateHz: 0 })).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
    expect(() => resample(times, times, { ...grid, count: 1.5 })).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});
