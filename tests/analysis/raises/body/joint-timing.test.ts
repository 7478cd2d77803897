import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import type { Agreed } from '../../../../packages/analysis/src/raises/body/consensus.ts';
import { jointTiming } from '../../../../packages/analysis/src/raises/body/joint-timing.ts';
import { priorRhythm } from '../../../../packages/analysis/src/raises/body/rhythm.ts';
import { createRandom } from '../../../../packages/analysis/src/signal/random.ts';

/** True times and rises of nine repetitions that are not quite alike: start, rise, hold, fall [s], top [m]. */
const truth = Array.from({ length: 9 }, (_, k) => {
  const pace = 1 + 0.05 * Math.sin(2.1 * k);
  return {
    startS: 1 + 2.2 * k + 0.05 * Math.cos(k),
    riseS: 0.8 * pace,
    holdS: 0.2 * pace,
    fallS: 0.7 * pace,
    topM: 0.05,
  };
});
const topOf = (one: (typeof truth)[number]): number => one.startS + one.riseS + one.holdS / 2;

/** Way of a minimum-jerk move, its time warped: quick first where the skew is above 0. */
function way(time: number, skew: number): number {
  if (time <= 0) return 0;
  if (time >= 1) return 1;
  const u = time + skew * time * (1 - time);
  return u * u * u * (10 - 15 * u + 6 * u * u);
}

/** Acceleration in cells of 50 ms as second differences of the true way. */
function acceleration(skew: number, noise: number): Float64Array {
  const height = (timeS: number): number =>
    truth.reduce((sum, one) => {
      const fallFrom = one.startS + one.riseS + one.holdS;
      const up = way((timeS - one.startS) / one.riseS, skew);
      return sum + one.topM * (up - way((timeS - fallFrom) / one.fallS, -skew));
    }, 0);
  const random = createRandom(7);
  const wild = (): number => (random() + random() + random() - 1.5) * 2 * noise;
  return Float64Array.from({ length: 460 }, (_, i) => {
    const middleS = (i + 0.5) / 20;
    const second = height(middleS + 0.025) - 2 * height(middleS) + height(middleS - 0.025);
    return second / 0.025 ** 2 + wild();
  });
}

/** What paths might agree on: every time off by up to 60 ms, all of them too short. */
function agreed(shiftS = 0): Agreed[] {
  return truth.map((one, k) => {
    const offS = 0.06 * Math.sin(5 * k + 1) + shiftS;
    const [startS, endS] = [one.startS + 0.08, one.startS + one.riseS + one.holdS + one.fallS - 0.05];
    return {
      startS: startS + offS,
      highFromS: startS + 0.6 + offS,
      topS: startS + 0.75 + offS,
      highToS: startS + 0.9 + offS,
      endS: endS + offS,
      startSpreadS: 0.01,
      topSpreadS: 0.01,
      endSpreadS: 0.01,
      ownRiseM: 0.045,
      ownVariance: 1e-6,
      ownSpreadM: 0.001,
      dipShare: 0,
      gapShare: 0,
      share: 1,
    };
  });
}

const single = truth.map(() => ({ riseM: 0.045, uncertaintyM: 0.004 }));

function timesFound(
  skew: number,
  noise: number,
  list = agreed(),
  shiftS = 0,
  absent: readonly [number, number] = [0, 0],
) {
  const samples = acceleration(skew, noise);
  const present = new Uint8Array(samples.length).fill(1).fill(0, ...absent);
  const signal = {
    acceleration: samples.map((value, i) => value * present[i]),
    present,
    impacts: new Float64Array(samples.length),
    barred: new Uint8Array(samples.length),
    startS: shiftS,
  };
  const variance = Math.max(1e-4, noise * noise);
  const rhythm = { ...priorRhythm(bodyDefaults, 11 + shiftS, variance), riseM: 0.046, riseSpread: 0.08 };
  return jointTiming(list, single, signal, rhythm, bodyDefaults);
}

test('without noise the times are found wherever paths had them, and the rises too', () => {
  for (const skew of [-0.15, 0, 0.15]) {
    const { repetitions, rises } = timesFound(skew, 0);
    truth.forEach((one, k) => {
      expect(Math.abs(repetitions[k].topS - topOf(one))).toBeLessThan(0.006);
      expect(Math.abs(repetitions[k].startS - one.startS)).toBeLessThan(0.03);
      expect(Math.abs(rises[k].riseM - 0.05)).toBeLessThan(0.001);
    });
  }
});

test('in noise the uncertainty says how far the tops are off', () => {
  const { repetitions } = timesFound(0.1, 0.08);
  const errors = truth.map((one, k) => repetitions[k].topS - topOf(one));
  const scores = errors.map((error, k) => error / repetitions[k].topSpreadS);
  expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.06);
  expect(Math.max(...scores.map(Math.abs))).toBeLessThan(3.5);
  const quiet = timesFound(0.1, 0.02).repetitions;
  repetitions.forEach((one, k) => {
    expect(one.topSpreadS).toBeGreaterThan(quiet[k].topSpreadS);
  });
});

test('a recording that begins later has all its times later by as much', () => {
  const now = timesFound(0.1, 0.05);
  const later = timesFound(0.1, 0.05, agreed(1000), 1000);
  now.repetitions.forEach((one, k) => {
    expect(later.repetitions[k].startS - one.startS).toBeCloseTo(1000, 6);
    expect(later.repetitions[k].topS - one.topS).toBeCloseTo(1000, 6);
    expect(later.repetitions[k].endS - one.endS).toBeCloseTo(1000, 6);
    expect(later.rises[k].riseM).toBeCloseTo(now.rises[k].riseM, 9);
  });
});

test('a repetition without samples is placed by the rest of the set, less surely', () => {
  const sure = agreed().map((one) => ({ ...one, topSpreadS: 0 }));
  const whole = timesFound(0.1, 0.03, sure).repetitions[4];
  const gap = Math.round(20 * topOf(truth[4]));
  const holed = timesFound(0.1, 0.03, sure, 0, [gap - 18, gap + 16]).repetitions[4];
  expect(Math.abs(holed.topS - topOf(truth[4]))).toBeLessThan(0.12);
  expect(holed.topSpreadS).toBeGreaterThan(3 * whole.topSpreadS);
  expect(Math.abs(holed.topS - topOf(truth[4]))).toBeLessThan(3 * holed.topSpreadS);
});

test('what dips at the top or is seldom seen keeps its times and rise', () => {
  const list = agreed().map((one, k) => (k === 3 ? { ...one, dipShare: 0.9 } : k === 8 ? { ...one, share: 0.1 } : one));
  const { repetitions, rises } = timesFound(0, 0.02, list);
  for (const k of [3, 8]) {
    expect(repetitions[k]).toEqual(list[k]);
    expect(rises[k]).toEqual(single[k]);
  }
  expect(Math.abs(repetitions[5].topS - topOf(truth[5]))).toBeLessThan(0.02);
});

test('what paths disagree on stays uncertain', () => {
  const wide = timesFound(
    0,
    0.02,
    agreed().map((one) => ({ ...one, topSpreadS: 0.2, ownSpreadM: 0.02 })),
  );
  for (const one of wide.repetitions) expect(one.topSpreadS).toBeGreaterThan(0.15);
  for (const one of wide.rises) expect(one.uncertaintyM).toBeGreaterThan(0.007);
});

test('an empty set stays empty', () => {
  expect(timesFound(0, 0.02, []).repetitions).toEqual([]);
});
