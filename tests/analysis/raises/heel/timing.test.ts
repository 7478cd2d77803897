import { describe, expect, test } from 'vitest';
import { findBumps, joinBumps } from '../../../../packages/analysis/src/raises/heel/bumps.ts';
import { describeBumps } from '../../../../packages/analysis/src/raises/heel/candidate.ts';
import { minimumJerk, moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';
import {
  moveEndS,
  moveStartS,
  reachOf,
  stretchOf,
  timeRepetition,
} from '../../../../packages/analysis/src/raises/heel/timing.ts';

const shape = moveShape(minimumJerk);
const way = (u: number): number => {
  const v = Math.min(1, Math.max(0, u));
  return v ** 3 * (10 - 15 * v + 6 * v * v);
};
/** Starts at 2.0, high from 2.7 to dip or hold, down from 3.6 to 4.6 s; recording begins at 1 s. */
function signalOf(level: (timeS: number) => number) {
  const levelM = Float64Array.from({ length: 601 }, (_, i) => level(1 + i / 100));
  return {
    startS: 1,
    sampleRateHz: 100,
    levelM,
    known: new Float64Array(601).fill(1),
    smoothM: levelM,
    turns: findBumps(levelM, 0.006),
    noise: { swaySdM: 0.0004, swayTimeS: 0.3, whiteSdM: 0.0003 },
  };
}

function timed(level: (timeS: number) => number) {
  const signal = signalOf(level);
  const joined = joinBumps(signal.turns, (high) => 0.5 * high.level);
  const [candidate] = describeBumps(joined, signal.smoothM, 0, 100, undefined);
  const stretch = stretchOf(candidate, signal);
  const reach = reachOf(stretch, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, signal);
  return {
    candidate,
    signal,
    stretch,
    timed: timeRepetition(stretch, reach, signal, { up: shape, down: shape, parts: undefined }),
  };
}

describe('timing', () => {
  test('gives start, middle of the hold and end, also when up and down differ', () => {
    const { timed: found } = timed((t) => 0.1 * (way((t - 2) / 0.7) - way((t - 3.6) / 1)));
    expect(Math.abs(found.startS - 2)).toBeLessThan(0.01);
    expect(Math.abs(found.topS - 3.15)).toBeLessThan(0.005);
    expect(Math.abs(found.endS - 4.6)).toBeLessThan(0.01);
    expect(Math.abs(found.topM - 0.1)).toBeLessThan(2e-4);
  });

  test('takes the highest high for the top when the top has a dip', () => {
    // first high at 2.7 to 2.9 s, dip of 30 mm at 3.1, second and lower high at 3.3 to 3.6 s
    const level = (t: number): number =>
      0.1 * way((t - 2) / 0.7) -
      0.03 * way((t - 2.9) / 0.2) +
      0.022 * way((t - 3.1) / 0.2) -
      0.092 * way((t - 3.6) / 1);
    const { timed: found, stretch } = timed(level);
    expect(stretch.highs.length).toBe(2);
    expect(Math.abs(found.topS - 2.8)).toBeLessThan(0.03);
    expect(Math.abs(found.startS - 2)).toBeLessThan(0.03);
    expect(Math.abs(found.endS - 4.6)).toBeLessThan(0.05);
    expect(found.highToS).toBeGreaterThan(3.4);
  });

  test('estimates roughly where a move begins and ends', () => {
    const { candidate, signal } = timed((t) => 0.1 * (way((t - 2) / 0.7) - way((t - 3.6) / 1)));
    expect(Math.abs(moveStartS(candidate, signal) - 2)).toBeLessThan(0.1);
    expect(Math.abs(moveEndS(candidate, signal) - 4.6)).toBeLessThan(0.1);
    expect(moveStartS(undefined, signal)).toBe(Number.POSITIVE_INFINITY);
    expect(moveEndS(undefined, signal)).toBe(Number.NEGATIVE_INFINITY);
  });
});
