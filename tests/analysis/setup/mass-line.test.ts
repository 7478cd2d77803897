import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { type MassFit, type MassLevel, massLine } from '../../../packages/analysis/src/setup/mass-line.ts';
import { leastSquaresLine } from '../../../packages/analysis/src/signal/line.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { runs } from '../../support/runs.ts';

const g = 9.80665;
const rule = setupDefaults.masses;
const levelsOf = (pairs: readonly (readonly [massKg: number, level: number])[]): MassLevel[] =>
  pairs.map(([massKg, level]) => ({ massKg, level, u: 0.1 }));
const lineThrough = (...pairs: (readonly [number, number])[]): MassFit => massLine(levelsOf(pairs), g, rule);

/** GUM (JCGM 100:2008), table H.6: temperature and correction of a thermometer, from memory. */
const gumH6 = [
  [21.521, -0.171],
  [22.012, -0.169],
  [22.512, -0.166],
  [23.003, -0.159],
  [23.507, -0.164],
  [23.999, -0.165],
  [24.513, -0.156],
  [25.002, -0.157],
  [25.503, -0.159],
  [26.01, -0.161],
  [26.511, -0.16],
];

interface Given {
  readonly massesKg: readonly number[];
  readonly readings: readonly number[];
}

describe('the line through known masses', () => {
  test('by hand: an exact line of slope 2 and offset 1', () => {
    const exact = lineThrough([0, 1], [10, 1 + 20 * g], [20, 1 + 40 * g], [0, 1]);
    if (exact.kind !== 'calibration') throw new Error(exact.reason);
    expect([exact.slope, exact.offset]).toBeCloseToEach([2, 1], { rtol: 1e-12, atol: 1e-9 });
    expect([exact.departureN, exact.returnN]).toBeCloseToEach([0, 0], { rtol: 0, atol: 1e-9 });
    // what is left is the width of the masses (0.1 kg over root 3, of 20 kg) and the gravity of the place
    expect(exact.slopeU / exact.slope).toBeCloseTo(Math.hypot(0.1 / Math.sqrt(3) / 20, 0.0015), 9);
  });

  test('SciPy: slope, offset, their scatter and the greatest departure', () => {
    const reference = readReference<Given[], Record<string, number>[]>('mass-line.calibrations');
    expect(reference.input.length).toBeGreaterThan(3);
    for (const [k, { massesKg, readings }] of reference.input.entries()) {
      const found = lineThrough(...massesKg.map((massKg, i) => [massKg, readings[i]] as const));
      if (found.kind !== 'calibration') throw new Error(found.reason);
      const expected = reference.expected[k];
      const names = ['slope', 'offset', 'offsetU', 'residualSd', 'slopeLow', 'slopeHigh', 'departureN'] as const;
      expect(names.map((name) => found[name])).toBeCloseToEach(
        names.map((name) => expected[name]),
        reference,
      );
    }
  });

  test('GUM annex H.3: -0.1712(29) and 0.002 18(67), residual 0.0035, as its text prints them', () => {
    const line = leastSquaresLine(
      gumH6.map(([t]) => t - 20),
      gumH6.map(([, b]) => b),
    );
    const printed = (value: number, digits: number): number => Number(value.toFixed(digits));
    expect([printed(line.intercept, 4), printed(line.interceptU!, 4)]).toEqual([-0.1712, 0.0029]);
    expect([printed(line.slope, 5), printed(line.slopeU!, 5)]).toEqual([0.00218, 0.00067]);
    expect(printed(line.residualSd!, 4)).toBe(0.0035);
  });

  test('a reversed cell has a falling line and is told', () => {
    const turned = lineThrough([0, 2], [10, 2 - 10 * g], [20, 2 - 20 * g]);
    expect(turned).toMatchObject({ kind: 'calibration', reversed: true, returnN: null });
  });

  test('readings in another unit change slope and offset alone', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (scale) => {
        const pairs = [
          [0, 1],
          [5, 50.4],
          [10, 98.7],
          [20, 197.4],
        ] as const;
        const [first, second] = [lineThrough(...pairs), lineThrough(...pairs.map(([m, y]) => [m, scale * y] as const))];
        if (first.kind !== 'calibration' || second.kind !== 'calibration') throw new Error('refused');
        expect([second.slope, second.offset, second.departureN]).toBeCloseToEach(
          [scale * first.slope, scale * first.offset, first.departureN],
          { rtol: 1e-9, atol: 1e-9 },
        );
      }),
      runs(50, 500),
    );
  });
});

describe('a calibration is refused', () => {
  test('without the empty sensor, with too few masses, with light ones', () => {
    expect(lineThrough([10, 98], [20, 196], [30, 294])).toMatchObject({ reason: 'no-empty' });
    expect(lineThrough([0, 0], [10, 98], [0, 0])).toMatchObject({ reason: 'too-few-masses', found: 2, allowed: 3 });
    expect(lineThrough([0, 0], [1, 9.8], [2, 19.6])).toMatchObject({ reason: 'too-light', found: 2, allowed: 5 });
  });

  test('when one mass lies off the line through the others, and says which', () => {
    const found = lineThrough([0, 0.1], [5, 5 * g], [10, 10 * g + 12], [15, 15 * g - 0.1], [20, 20 * g], [0, -0.1]);
    expect(found).toMatchObject({ reason: 'one-out-of-line', massKg: 10 });
    expect(found.kind === 'refused' && Math.abs(found.found - 12) < 0.5).toBe(true);
  });

  test('when the readings bend', () => {
    const bend = [0, 5, 10, 15, 20].map((m) => [m, m * g * (1 + 0.006 * m)] as const);
    expect(lineThrough(...bend)).toMatchObject({ reason: 'not-straight', allowed: 0.01 });
  });

  test('four readings that scatter blame none of the masses: one degree of freedom proves nothing', () => {
    const found = lineThrough([0, 0], [5, 5 * g + 0.3], [10, 10 * g - 0.3], [20, 20 * g + 15]);
    expect(found).toMatchObject({ reason: 'not-straight', massKg: null });
  });

  test('when nothing answers to the masses', () => {
    expect(lineThrough([0, 1], [10, 1], [20, 1])).toMatchObject({ reason: 'no-answer' });
    expect(lineThrough([0, 1], [10, 1.4], [20, 0.8])).toMatchObject({ reason: 'no-answer' });
  });

  test('when the empty sensor shows another value afterwards', () => {
    const found = lineThrough([0, 0], [20, 20 * g + 1], [40, 40 * g + 3], [60, 60 * g + 3], [0, 5.2]);
    expect(found).toMatchObject({ reason: 'zero-moved', allowed: 5 });
  });

  test('a mass below nothing is no mass', () => {
    expect(() => lineThrough([-1, 0], [0, 1], [10, 98])).toThrow(RangeError);
  });
});
