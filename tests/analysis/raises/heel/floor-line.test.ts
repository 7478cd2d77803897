import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { floorLine, restVotes } from '../../../../packages/analysis/src/raises/heel/floor-line.ts';
import { createRandom, gaussian } from '../../../../packages/analysis/src/signal/random.ts';

const random = createRandom(3);
const votes = (level: (i: number) => number) =>
  Array.from({ length: 40 }, (_, i) => ({
    timeS: 2 * i,
    level: level(i) + 0.001 * gaussian(random),
    weight: 1,
    rest: i,
  }));

describe('floor', () => {
  test('follows a slow drift', () => {
    const floor = floorLine(
      votes((i) => 0.0001 * i),
      0,
      0.001,
      heelDefaults.floor,
    );
    expect(Math.abs(floor.at(40) - 0.002)).toBeLessThan(0.0008);
    expect(floor.steps).toEqual([]);
  });

  test('leaves returns that stay high aside', () => {
    const floor = floorLine(
      votes((i) => (i % 4 === 0 ? 0.03 : 0)),
      0,
      0.001,
      heelDefaults.floor,
    );
    expect(Math.abs(floor.at(40))).toBeLessThan(0.001);
  });

  test('steps where the sensor was moved', () => {
    const floor = floorLine(
      votes((i) => (i < 20 ? 0 : 0.02)),
      0,
      0.001,
      heelDefaults.floor,
    );
    expect(floor.steps.length).toBe(1);
    expect(Math.abs(floor.steps[0].timeS - 39)).toBeLessThan(2.1);
    expect(Math.abs(floor.at(10))).toBeLessThan(0.001);
    expect(Math.abs(floor.at(70) - 0.02)).toBeLessThan(0.001);
  });

  test('without evidence is the level at rest', () => {
    const floor = floorLine([], 0.3, 0.001, heelDefaults.floor);
    expect(floor.at(5)).toBe(0.3);
    expect(floor.uncertainty(5)).toBe(0.001);
  });
});

test('each half second of rest speaks once, by its middle', () => {
  const smooth = Float64Array.from({ length: 400 }, (_, i) => (i < 200 ? 1 : 2));
  const found = restVotes(
    smooth,
    10,
    100,
    [
      { fromS: 10.5, toS: 11.49 },
      { fromS: 12.5, toS: 12.7 },
    ],
    heelDefaults.floor,
  );
  expect(found.map((vote) => vote.level)).toEqual([1, 1, 2]);
  expect(found[0].weight).toBeGreaterThan(found[2].weight);
});

test('a long rest with the heel up is one high return, not a moved sensor', () => {
  const steady = Array.from({ length: 30 }, (_, i) => ({ timeS: 2 * i, level: 0.0005 * (i % 3), weight: 1, rest: i }));
  const pause = Array.from({ length: 16 }, (_, k) => ({ timeS: 29 + k / 20, level: 0.03, weight: 1, rest: 100 }));
  const votes = [...steady.slice(0, 15), ...pause, ...steady.slice(15)];
  expect(floorLine(votes, 0, 0.001, heelDefaults.floor).steps).toEqual([]);
});

test('a long rest gives no more votes than three', () => {
  const votes = restVotes(new Float64Array(1000), 0, 100, [{ fromS: 0, toS: 8 }], heelDefaults.floor);
  expect(votes.length).toBe(3);
  expect(Math.max(...votes.map((vote) => vote.weight))).toBeLessThanOrEqual(1.3);
});

test('the rule is read: a long rest in more pieces, and a line that follows quick drift', () => {
  const rests = [{ fromS: 0, toS: 8 }];
  expect(restVotes(new Float64Array(1000), 0, 100, rests, { ...heelDefaults.floor, mostPieces: 9 })).toHaveLength(9);
  const quick = Array.from({ length: 40 }, (_, i) => ({ timeS: 2 * i, level: 0.0008 * i, weight: 1, rest: i }));
  const missedBy = (changes: Partial<typeof heelDefaults.floor>): number =>
    Math.abs(floorLine(quick, 0, 0.02, { ...heelDefaults.floor, ...changes }).at(0));
  expect(missedBy({ usualSlopeMps: 1 })).toBeLessThan(0.2 * missedBy({}));
});
