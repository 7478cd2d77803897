import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { floorSteps } from '../../../../packages/analysis/src/raises/heel/floor-steps.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

const cycleS = 2;

/** Rests and tops of a set of some raises: the floor at each rest, how high each return stays, and the height [m]. */
function set(count: number, floor: (timeS: number) => number, stays: (i: number) => number, heightM = 0.09) {
  const random = createRandom(7);
  const noise = (): number => 0.002 * gaussian(random);
  return {
    votes: Array.from({ length: count }, (_, i) => ({
      timeS: cycleS * i,
      level: floor(cycleS * i) + stays(i) + noise(),
      weight: 1,
      rest: i,
    })),
    tops: Array.from({ length: count - 1 }, (_, i) => ({
      timeS: cycleS * (i + 0.5),
      level: floor(cycleS * (i + 0.5)) + heightM - 0.0002 * i + noise(),
    })),
  };
}

const slipAtS = 19;
const slipped = (timeS: number): number => (timeS > slipAtS ? 0.015 : 0);
const highReturns = (i: number): number => (i % 4 === 2 ? 0.025 : 0);

describe('a sensor that slips', () => {
  test('is found where it slipped, by as much', () => {
    const { votes, tops } = set(20, slipped, highReturns);
    const steps = floorSteps(votes, tops, 0.001, heelDefaults.floor.steps);
    expect(steps.length).toBe(1);
    expect(Math.abs(steps[0].timeS - slipAtS)).toBeLessThan(cycleS);
    expect(Math.abs(steps[0].stepM - 0.015)).toBeLessThan(0.003);
  });

  test('is found in a short set with three raises after it', () => {
    const { votes, tops } = set(8, (timeS) => (timeS > 9 ? -0.02 : 0), highReturns);
    const steps = floorSteps(votes, tops, 0.001, heelDefaults.floor.steps);
    expect(steps.length).toBe(1);
    expect(Math.abs(steps[0].timeS - 9)).toBeLessThan(cycleS);
  });

  test('is told from returns that stay high by the tops: they step only with the sensor', () => {
    const last = 14;
    const stayHigh = (i: number): number => (i >= last ? 0.015 : 0);
    const { votes } = set(18, () => 0, stayHigh);
    const steady = set(18, () => 0, stayHigh).tops;
    const moved = set(
      18,
      (timeS) => (timeS > cycleS * last - 1.5 ? 0.015 : 0),
      () => 0,
    ).tops;
    expect(floorSteps(votes, steady, 0.001, heelDefaults.floor.steps)).toEqual([]);
    expect(floorSteps(votes, moved, 0.001, heelDefaults.floor.steps).length).toBe(1);
  });

  test('twice is found twice', () => {
    const { votes, tops } = set(36, (timeS) => (timeS > 23 ? 0.02 : 0) - (timeS > 47 ? 0.035 : 0), highReturns);
    const steps = floorSteps(votes, tops, 0.001, heelDefaults.floor.steps);
    expect(steps.map(({ stepM }) => Math.round(stepM * 100))).toEqual([2, -3]);
  });
});

test('a floor that stays, with returns that stay high now and then, has no step', () => {
  for (let every = 2; every < 7; every++) {
    const { votes, tops } = set(
      24,
      () => 0,
      (i) => (i % every === 1 ? 0.02 + 0.002 * (i % 5) : 0),
    );
    expect(floorSteps(votes, tops, 0.001, heelDefaults.floor.steps)).toEqual([]);
  }
});

test('a slow drift is no step', () => {
  const { votes, tops } = set(40, (timeS) => (0.003 / 60) * timeS, highReturns);
  expect(floorSteps(votes, tops, 0.001, heelDefaults.floor.steps)).toEqual([]);
});

test('too few rests tell of no step', () => {
  const { votes, tops } = set(
    3,
    (timeS) => (timeS > 3 ? 0.03 : 0),
    () => 0,
  );
  expect(floorSteps(votes, tops, 0.001, heelDefaults.floor.steps)).toEqual([]);
  expect(floorSteps([], [], 0.001, heelDefaults.floor.steps)).toEqual([]);
});

test('the same levels lifted by any amount have the same steps', () => {
  const { votes, tops } = set(20, slipped, highReturns);
  const [plain] = floorSteps(votes, tops, 0.001, heelDefaults.floor.steps);
  const up = <One extends { level: number }>(all: One[]): One[] =>
    all.map((one) => ({ ...one, level: one.level + 0.4 }));
  const [lifted] = floorSteps(up(votes), up(tops), 0.001, heelDefaults.floor.steps);
  expect(lifted.timeS).toBe(plain.timeS);
  expect(lifted.stepM).toBeCloseTo(plain.stepM, 9);
});

test('the rule is read: a step must gain what it says, and be as great', () => {
  const { votes, tops } = set(20, slipped, highReturns);
  const { steps } = heelDefaults.floor;
  for (const stricter of [{ leastGain: 1e6 }, { leastStepM: 0.02 }, { stepsMost: 0 }, { sideLeast: 11 }]) {
    expect(floorSteps(votes, tops, 0.001, { ...steps, ...stricter })).toEqual([]);
  }
});
