import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LowerLine } from '../../../packages/sensors/src/time/lower-line.ts';
import { runs } from '../../support/runs.ts';

type Points = readonly (readonly [x: number, y: number])[];

function lineOf(points: Points): LowerLine {
  const lower = new LowerLine();
  for (const [x, y] of points) lower.add(x, y);
  return lower;
}

/** Sum of what the points stand above a line. */
function sumAbove(points: Points, { slope, intercept }: { slope: number; intercept: number }): number {
  return points.reduce((sum, [x, y]) => sum + (y - intercept - slope * x), 0);
}

/** The linear programme by trying every line through two points: the optimum of two unknowns touches two of them. */
function bestByTrying(points: Points): number {
  let least = Infinity;
  for (const [x1, y1] of points) {
    for (const [x2, y2] of points) {
      if (x2 <= x1) continue;
      const slope = (y2 - y1) / (x2 - x1);
      const intercept = y1 - slope * x1;
      if (points.some(([x, y]) => y < intercept + slope * x - 1e-9)) continue;
      least = Math.min(least, sumAbove(points, { slope, intercept }));
    }
  }
  return least;
}

describe('the line below all points', () => {
  test('by hand: one late arrival among others on a line does not move it', () => {
    const { line } = lineOf([
      [0, 5],
      [1, 7],
      [2, 20],
      [3, 11],
    ]);
    expect(line).toEqual({ slope: 2, intercept: 5 });
  });

  test('by hand: the edge below the mean of x is taken, not the longest', () => {
    // hull 0,0 - 2,1 - 10,9: the mean of x is 4
    const points = [
      [0, 0],
      [2, 1],
      [4, 8],
      [10, 9],
    ] as const;
    expect(lineOf(points).line).toEqual({ slope: 1, intercept: -1 });
    // with more points at the start the mean moves to the first edge
    const early = [
      [0, 0],
      [0.5, 9],
      [0.6, 9],
      [0.7, 9],
      [0.8, 9],
      [2, 1],
      [10, 9],
    ] as const;
    expect(lineOf(early).line).toEqual({ slope: 1, intercept: -1 });
    const earlier = [
      [0, 0],
      [0.5, 9],
      [0.6, 9],
      [0.7, 9],
      [0.8, 9],
      [0.9, 9],
      [1, 9],
      [2, 1],
      [10, 9],
    ] as const;
    expect(lineOf(earlier).line).toEqual({ slope: 0.5, intercept: 0 });
  });

  test('of two points at one place the lower counts, and one place gives no line', () => {
    expect(lineOf([[1, 4]]).line).toBeUndefined();
    expect(
      lineOf([
        [1, 4],
        [1, 3],
        [1, 6],
      ]).line,
    ).toBeUndefined();
    expect(
      lineOf([
        [1, 4],
        [1, 3],
        [1, 6],
        [3, 5],
      ]).line,
    ).toEqual({ slope: 1, intercept: 2 });
    expect(lineOf([]).range).toBeUndefined();
    expect(
      lineOf([
        [1, 4],
        [3, 5],
      ]).range,
    ).toEqual({ from: 1, to: 3 });
  });

  test('refuses points that go back', () => {
    expect(() =>
      lineOf([
        [2, 0],
        [1, 0],
      ]),
    ).toThrow('Points come with rising x: 2, then 1.');
  });

  test('keeps few of a thousand points', () => {
    const lower = new LowerLine();
    for (let i = 0; i < 1000; i++) lower.add(i, (i * 7919) % 1000);
    expect(lower.count).toBe(1000);
    expect(lower.kept).toBeLessThan(30);
  });

  test('lies below all points, and no line through two of them lies nearer', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: -50, max: 50 })), {
          minLength: 2,
          maxLength: 25,
        }),
        (unsorted) => {
          const points = unsorted.sort(([a], [b]) => a - b);
          const { line } = lineOf(points);
          expect(line === undefined).toBe(points[0][0] === points.at(-1)![0]);
          if (line === undefined) return;
          for (const [x, y] of points) expect(y - line.intercept - line.slope * x).toBeGreaterThan(-1e-9);
          expect(sumAbove(points, line)).toBeCloseTo(bestByTrying(points), 8);
        },
      ),
      runs(300, 5000),
    );
  });
});
