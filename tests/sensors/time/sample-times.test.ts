import { describe, expect, test } from 'vitest';
import { SampleTimes } from '../../../packages/sensors/src/time/sample-times.ts';
import '../../support/close.ts';

describe('without a clock', () => {
  test('times follow from the number of the sample, from the first one', () => {
    const times = new SampleTimes(0.01, null);
    expect(times.of(7, 3, null)).toBeCloseToEach(Float64Array.of(0, 0.01, 0.02), { rtol: 0, atol: 1e-12 });
    expect(times.of(110, 1, null)).toBeCloseToEach(Float64Array.of(1.03), { rtol: 0, atol: 1e-12 });
    expect([times.leapCount, times.sampleIntervalS]).toEqual([0, 0.01]);
  });
});

describe('with a clock', () => {
  /** Packets of five samples; the stamp of each is off by so many ticks of a millisecond. */
  function streamed(
    intervalS: number,
    count: number,
    offBy: (packet: number) => number,
    times = new SampleTimes(0.01, 1e-3),
  ) {
    const all: number[] = [];
    for (let k = 0; k < count; k++) all.push(...times.of(5 * k, 5, 100 + Math.round(5000 * intervalS * k) + offBy(k)));
    return { all, times };
  }

  const steps = (all: readonly number[]): number[] => all.slice(1).map((timeS, i) => timeS - all[i]);

  test('the jitter of its stamps makes no holes', () => {
    const { all, times } = streamed(0.01, 200, (k) => [0, 4, -6, 2, 7][k % 5]);
    for (const step of steps(all)) expect(Math.abs(step - 0.01)).toBeLessThan(0.0011);
    expect(all.at(-1)).toBeGreaterThan(9.98);
    expect(all.at(-1)).toBeLessThan(10);
    expect(times.leapCount).toBe(0);
  });

  test('an interval that is not the told one is found, and the times keep to the clock', () => {
    const { all, times } = streamed(0.0103, 400, () => 0);
    expect(times.sampleIntervalS).toBeCloseTo(0.0103, 5);
    expect(all.at(-1)).toBeCloseTo(1999 * 0.0103, 2);
    expect(Math.max(...steps(all))).toBeLessThan(0.013);
  });

  test('a device that paused without losing a number leaves a stretch without samples', () => {
    const { all, times } = streamed(0.01, 100, (k) => (k < 50 ? 0 : 700));
    expect(all[250] - all[249]).toBeCloseTo(0.71, 9);
    expect(times.leapCount).toBe(1);
    expect(Math.max(...steps(all.slice(250)))).toBeCloseTo(0.01, 6);
  });

  test('a clock that was set back does not turn the samples back', () => {
    const { all, times } = streamed(0.01, 100, (k) => (k < 50 ? 0 : -2000));
    expect(Math.min(...steps(all))).toBeGreaterThan(0.009);
    expect(Math.max(...steps(all))).toBeLessThan(0.011);
    expect(times.leapCount).toBe(1);
  });

  test('packets without a stamp lie where their number tells', () => {
    const times = new SampleTimes(0.01, 1e-3);
    expect(times.of(0, 2, null)[1]).toBeCloseTo(0.01, 12);
    expect(times.of(2, 2, 5000)[0]).toBeCloseTo(0.02, 12);
    expect(times.of(10, 2, null)[0]).toBeCloseTo(0.1, 12);
    expect(times.of(12, 1, 5100)[0]).toBeCloseTo(0.12, 12);
  });
});
