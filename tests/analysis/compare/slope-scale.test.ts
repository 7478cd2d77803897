import { expect, test } from 'vitest';
import { type ScaledPoint, scaleSlopeU } from '../../../packages/analysis/src/compare/slope-scale.ts';

const points = (names: readonly (string | null)[], relativeU: number | null = 0.01): ScaledPoint[] =>
  names.map((calibration, x) => ({ x, y: 1000 + 10 * x, scale: { calibration, relativeU } }));
const ends = (of: readonly ScaledPoint[]): number => (of[of.length - 1].y - of[0].y) / (of.length - 1);

test('one calibration for all turns the slope by its share: 1 % of 10', () => {
  expect(scaleSlopeU(points(['a', 'a', 'a', 'a', 'a']), ends)).toBeCloseTo(0.1, 12);
});

test('one that begins in the middle looks like a rise: 10.4 N and 10 N over four steps', () => {
  expect(scaleSlopeU(points(['a', 'a', 'b', 'b', 'b']), ends)).toBeCloseTo(Math.hypot(10.4, 10) / 4, 12);
  expect(scaleSlopeU(points([null, null, null, null, null]), ends)).toBeCloseTo(Math.hypot(10.4, 10) / 4, 12);
});

test('no scale, or none that is known, adds nothing', () => {
  expect(scaleSlopeU(points(['a', 'a', 'a'], null), ends)).toBe(0);
  expect(
    scaleSlopeU(
      [
        { x: 0, y: 1 },
        { x: 1, y: 3 },
      ],
      ends,
    ),
  ).toBe(0);
});
