import { effortDefaults } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { firstFrom, restLevel, restLine } from '../../../packages/analysis/src/efforts/rest-level.ts';
import { madeNoise } from '../../support/made-pull.ts';

const rule = effortDefaults.rest;
const timesS = Float64Array.from({ length: 2500 }, (_, i) => i / 1000);
const noise = madeNoise(5, 2);
const still = timesS.map(() => 40 + noise());

test('the first index from a time on', () => {
  const times = Float64Array.of(0, 1, 2);
  expect([-1, 0, 0.5, 2, 3].map((timeS) => firstFrom(times, timeS))).toEqual([0, 0, 1, 2, 3]);
});

describe('the level at rest', () => {
  test('is the mean, uncertain by noise over the root of the number of samples', () => {
    const { level, u, sampleSd } = restLevel({ timesS, samples: still }, 0, 2.5, rule)!;
    expect(Math.abs(level - 40)).toBeLessThan(0.15);
    expect(u).toBeGreaterThan(0.02);
    expect(u).toBeLessThan(0.07);
    expect(Math.abs(sampleSd - 2)).toBeLessThan(0.2);
  });

  test('is not moved by tension that creeps in, a dip, or a knock', () => {
    for (const disturbance of [
      (t: number) => Math.max(0, 15 * (t - 1.7)),
      (t: number) => (t > 2.2 ? -20 * Math.sin((Math.PI * (t - 2.2)) / 0.3) : 0),
      (t: number) => (t > 1 && t < 1.03 ? 150 : 0),
    ]) {
      const samples = still.map((value, i) => value + disturbance(timesS[i]));
      expect(Math.abs(restLevel({ timesS, samples }, 0, 2.5, rule)!.level - 40)).toBeLessThan(0.3);
    }
  });

  test('is not known from too short a stretch', () => {
    expect(restLevel({ timesS, samples: still }, 1, 1.2, rule)).toBeNull();
    expect(restLevel({ timesS, samples: still }, 5, 7, rule)).toBeNull();
  });
});

describe('the line under an effort', () => {
  const level = (value: number, centreS: number) => ({ level: value, u: 1, blockSd: 1, sampleSd: 1, centreS });

  test('joins the levels before and after', () => {
    const line = restLine(level(10, 1), level(20, 11), 0)!;
    expect([0, 1, 6, 11, 12].map((timeS) => line.at(timeS))).toEqual([10, 10, 15, 20, 20]);
    expect(line.u(1)).toBe(1);
    expect(line.u(6)).toBeCloseTo(Math.SQRT1_2, 12);
    expect(restLine(level(10, 1), level(20, 11), 0.1)!.u(6)).toBeCloseTo(Math.hypot(Math.SQRT1_2, 1), 12);
  });

  test('is level where one side is missing, and missing where both are', () => {
    expect(restLine(null, level(20, 11), 0.1)!.at(3)).toBe(20);
    expect(restLine(null, null, 0.1)).toBeNull();
  });
});
