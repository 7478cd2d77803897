import { describe, expect, test } from 'vitest';
import {
  findTrack,
  ontoGrid,
  trackGaps,
  withoutSpikes,
} from '../../../packages/analysis/src/movement/heel-height-grid.ts';

const every = (stepS: number, count: number): Float64Array => Float64Array.from({ length: count }, (_, i) => i * stepS);

describe('track', () => {
  const samples = Float64Array.of(1, 2, 3);
  const trace = {
    groups: [{ timesS: every(0.1, 3), channels: [{ quantity: 'heel-height', axis: null, samples }] }],
  } as const;

  test('is the group that holds all the axes wanted', () => {
    expect(findTrack(trace, 'heel-height', [null])!.parts[0]).toBe(samples);
    expect(findTrack(trace, 'acceleration', ['x', 'y', 'z'])).toBeUndefined();
  });
});

describe('spikes', () => {
  test('of a single sample go, steps and steep ways stay', () => {
    const timesS = every(0.01, 100);
    const step = Float64Array.from(timesS, (_, i) => (i < 50 ? 0 : 1) + i / 50);
    const spiked = Float64Array.from(step);
    spiked[20] = 5;
    const found = withoutSpikes({ timesS, parts: [spiked] }, { leastDistance: 0.05, timesUsual: 10 });
    expect(found.spikesS).toEqual([0.2]);
    expect(Math.max(...found.parts[0].map((value, i) => Math.abs(value - step[i])))).toBeLessThan(1e-12);
  });
});

describe('grid', () => {
  test('of a tenth of the rate gets means that keep a straight line', () => {
    const timesS = every(0.001, 2001);
    const line = timesS.map((time) => 3 * time - 1);
    const [found] = ontoGrid({ timesS, parts: [line] }, { startS: 0, sampleRateHz: 100, count: 200 });
    for (let i = 1; i < 199; i++) expect(Math.abs(found[i] - (3 * (i / 100) - 1))).toBeLessThan(1e-9);
  });

  test('of a tenth of the rate loses what lies above it', () => {
    const timesS = every(0.001, 2001);
    const hum = timesS.map((time) => Math.sin(2 * Math.PI * 300 * time));
    const [found] = ontoGrid({ timesS, parts: [hum] }, { startS: 0, sampleRateHz: 100, count: 200 });
    expect(Math.max(...found.subarray(1, 199).map(Math.abs))).toBeLessThan(0.1);
  });

  test('finer than a slow sensor keeps the top between two samples', () => {
    const timesS = every(0.1, 31);
    const wave = timesS.map((time) => Math.sin(2 * Math.PI * 0.9 * time));
    const [found] = ontoGrid({ timesS, parts: [wave] }, { startS: 0, sampleRateHz: 100, count: 300 });
    const error = found.map((value, i) => Math.abs(value - Math.sin(0.018 * Math.PI * i)));
    expect(Math.max(...error.subarray(12, 288))).toBeLessThan(0.02);
  });

  test('crosses a gap in a straight line', () => {
    const timesS = Float64Array.of(0, 0.01, 0.02, 0.03, 1.03, 1.04, 1.05, 1.06);
    const values = Float64Array.of(0, 0, 0, 0, 10, 10, 10, 10);
    const [found] = ontoGrid({ timesS, parts: [values] }, { startS: 0, sampleRateHz: 100, count: 100 });
    expect(Math.abs(found[53] - 5)).toBeLessThan(1e-9);
  });
});

test('gaps are longer than the rule and than the usual interval', () => {
  const timesS = Float64Array.of(0, 0.1, 0.2, 0.6, 0.7, 0.8);
  expect(trackGaps({ timesS, parts: [timesS] }, 0.15)).toEqual([{ fromS: 0.2, toS: 0.6 }]);
  expect(trackGaps({ timesS: every(0.1, 9), parts: [] }, 0.05)).toEqual([]);
});
