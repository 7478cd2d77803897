import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastSquaresLine, theilSen } from '../../../packages/analysis/src/signal/line.ts';
import { arbitraryValue } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

/** Hollander, Wolfe & Chicken (2014), example 9.1. */
const example = { x: [1, 2, 3, 4, 5], y: [1.26, 1.27, 1.12, 1.16, 1.03] };

/** Anscombe (1973), Am Stat 27:17-21, sets I and III (from memory). */
const anscombeX = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
const anscombe1 = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
const anscombe3 = [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73];

/** NIST StRD, linear regression, Norris: pairs of y and x. */
const norris = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
];

describe('Theil-Sen', () => {
  test('Hollander, Wolfe & Chicken (2014) 9.1: slope -0.05625, joint intercept 1.31625', () => {
    const { slope, intercept } = theilSen(example.x, example.y);
    expect([slope, intercept]).toBeCloseToEach([-0.05625, 1.31625], { rtol: 1e-12, atol: 0 });
  });

  test('Anscombe III: one outlier moves the least-squares line and not this one', () => {
    expect([theilSen(anscombeX, anscombe3).slope, theilSen(anscombeX, anscombe1).slope]).toBeCloseToEach(
      // five and six digits printed
      [0.34556, 0.501667],
      { rtol: 2e-5, atol: 0 },
    );
    expect([leastSquaresLine(anscombeX, anscombe3).slope]).toBeCloseToEach([0.4997], { rtol: 1e-4, atol: 0 });
  });

  test('two points have the line through them', () => {
    const { slope, intercept, slopeLow, slopeHigh } = theilSen([1, 3], [2, 8]);
    expect([slope, intercept, slopeLow, slopeHigh]).toEqual([3, -1, 3, 3]);
  });

  test('agrees with the definition, every pair and a sort', () => {
    const middle = (values: number[]): number => {
      const sorted = values.slice().sort((a, b) => a - b);
      return (sorted[Math.floor((sorted.length - 1) / 2)] + sorted[Math.ceil((sorted.length - 1) / 2)]) / 2;
    };
    const point = fc.tuple(fc.integer({ min: 0, max: 9 }), arbitraryValue);
    const points = fc
      .array(point, { minLength: 2, maxLength: 20 })
      .filter((list) => list.some(([x]) => x !== list[0][0]));
    fc.assert(
      fc.property(points, (list) => {
        const slopes = list.flatMap(([x, y], i) =>
          list.slice(i + 1).flatMap(([u, v]) => (u === x ? [] : [(v - y) / (u - x)])),
        );
        const slope = middle(slopes);
        const line = theilSen(
          list.map(([x]) => x),
          list.map(([, y]) => y),
        );
        expect([line.slope, line.intercept]).toBeCloseToEach([slope, middle(list.map(([x, y]) => y - slope * x))], {
          rtol: 1e-12,
          atol: 1e-12,
        });
        expect(line.slopeLow).toBeLessThanOrEqual(line.slope);
        expect(line.slopeHigh).toBeGreaterThanOrEqual(line.slope);
      }),
      runs(100, 2000),
    );
  });

  test('agrees with scipy.stats.theilslopes and linregress, ties included', () => {
    interface Series {
      x: number[];
      y: number[];
    }
    type Values = Record<
      'theilSlope' | 'theilIntercept' | 'slopeLow' | 'slopeHigh' | 'slope' | 'intercept' | 'slopeU' | 'interceptU',
      number
    >;
    const { input, expected, ...tolerance } = readReference<Series[], Values[]>('line.slopes');
    input.forEach(({ x, y }, i) => {
      const robust = theilSen(x, y);
      const fitted = leastSquaresLine(x, y);
      expect([robust.slope, robust.intercept, robust.slopeLow, robust.slopeHigh]).toBeCloseToEach(
        [expected[i].theilSlope, expected[i].theilIntercept, expected[i].slopeLow, expected[i].slopeHigh],
        tolerance,
      );
      expect([fitted.slope, fitted.intercept, fitted.slopeU!, fitted.interceptU!]).toBeCloseToEach(
        [expected[i].slope, expected[i].intercept, expected[i].slopeU, expected[i].interceptU],
        tolerance,
      );
    });
    expect(input.length).toBe(4);
  });

  test('laws: a line added to y adds its slope, a factor multiplies slope and bounds', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryValue, { minLength: 3, maxLength: 25 }),
        fc.integer({ min: 1, max: 50 }),
        (y, k) => {
          const x = y.map((_, i) => i);
          const plain = theilSen(x, y);
          const tilted = theilSen(
            x,
            y.map((value, i) => value + k * i),
          );
          const scaled = theilSen(
            x,
            y.map((value) => value * k),
          );
          expect([tilted.slope]).toBeCloseToEach([plain.slope + k], { rtol: 1e-9, atol: 1e-9 });
          expect([scaled.slope, scaled.slopeLow, scaled.slopeHigh]).toBeCloseToEach(
            [k * plain.slope, k * plain.slopeLow, k * plain.slopeHigh],
            { rtol: 1e-9, atol: 1e-9 },
          );
        },
      ),
      runs(60, 1000),
    );
  });
});

describe('least squares', () => {
  test('NIST StRD Norris: the certified values', () => {
    const line = leastSquaresLine(
      norris.map(([, x]) => x),
      norris.map(([y]) => y),
    );
    expect(norris.length).toBe(36);
    expect([line.slope, line.intercept]).toBeCloseToEach([1.00211681802045, -0.262323073774029], {
      rtol: 1e-12,
      atol: 0,
    });
    expect([line.slopeU!, line.interceptU!, line.residualSd!]).toBeCloseToEach(
      [0.429796848199937e-3, 0.232818234301152, 0.884796396144373],
      { rtol: 1e-11, atol: 0 },
    );
  });

  test('example 9.1 and Anscombe I', () => {
    const first = leastSquaresLine(example.x, example.y);
    expect([first.slope, first.intercept]).toBeCloseToEach([-0.057, 1.339], { rtol: 1e-12, atol: 0 });
    // sqrt(0.00779 / 3 / 10)
    expect([first.slopeU!]).toBeCloseToEach([Math.sqrt(0.00779 / 30)], { rtol: 1e-9, atol: 0 });
    const second = leastSquaresLine(anscombeX, anscombe1);
    expect([second.slope, second.intercept, second.slopeU!]).toBeCloseToEach([0.500091, 3.00009, 0.117906], {
      // six digits printed
      rtol: 5e-6,
      atol: 0,
    });
  });

  test('a weight of 0 leaves a point out, and a weight of 2 counts it twice', () => {
    const left = leastSquaresLine([1, 2, 3, 4], [1, 2, 90, 5], [1, 1, 0, 1]);
    const without = leastSquaresLine([1, 2, 4], [1, 2, 5]);
    expect([left.slope, left.intercept]).toBeCloseToEach([without.slope, without.intercept], {
      rtol: 1e-12,
      atol: 1e-12,
    });
    const doubled = leastSquaresLine([1, 2, 4], [1, 2, 5], [1, 2, 1]);
    const twice = leastSquaresLine([1, 2, 2, 4], [1, 2, 2, 5]);
    expect([doubled.slope, doubled.intercept]).toBeCloseToEach([twice.slope, twice.intercept], {
      rtol: 1e-12,
      atol: 1e-12,
    });
  });

  test('keeps its digits far from zero', () => {
    const x = [1e9, 1e9 + 1, 1e9 + 2, 1e9 + 3];
    expect([leastSquaresLine(x, [5, 7, 9, 11]).slope]).toBeCloseToEach([2], { rtol: 1e-12, atol: 0 });
  });

  test('two points have a line and no uncertainty', () => {
    expect(leastSquaresLine([0, 2], [1, 5])).toEqual({
      slope: 2,
      intercept: 1,
      residualSd: undefined,
      slopeU: undefined,
      interceptU: undefined,
    });
  });
});

test.each([theilSen, leastSquaresLine])('%o refuses what has no line', (line) => {
  expect(() => line([1], [1])).toThrow(expect.objectContaining({ code: 'too-short' }));
  expect(() => line([1, 2], [1])).toThrow(expect.objectContaining({ code: 'length-mismatch' }));
  expect(() => line([1, Number.NaN], [1, 2])).toThrow(expect.objectContaining({ code: 'not-finite' }));
  expect(() => line([3, 3, 3], [1, 2, 3])).toThrow(expect.objectContaining({ code: 'out-of-range' }));
});

test('weights that are negative or leave one point are refused', () => {
  expect(() => leastSquaresLine([1, 2, 3], [1, 2, 3], [1, -1, 1])).toThrow(
    expect.objectContaining({ code: 'out-of-range' }),
  );
  expect(() => leastSquaresLine([1, 2, 3], [1, 2, 3], [0, 1, 0])).toThrow(
    expect.objectContaining({ code: 'out-of-range' }),
  );
  expect(() => leastSquaresLine([1, 2, 3], [1, 2, 3], [0, 0, 0])).toThrow(
    expect.objectContaining({ code: 'out-of-range' }),
  );
});
