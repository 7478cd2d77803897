import { describe, expect, test } from 'vitest';
import { type MoveShape, wayGone } from '../../packages/simulation/src/smooth-move.ts';

const kinds = ['minimum-jerk', 'cosine', 'minimum-snap', 'plateau', 'two-phase'] as const;
const shapes: MoveShape[] = kinds.flatMap((kind) =>
  [-0.3, 0, 0.3].flatMap((skew) => [0.35, 0.5].map((share) => ({ kind, skew, share }))),
);
const plain = (kind: MoveShape['kind']): MoveShape => ({ kind, skew: 0, share: 0.5 });

describe('a smooth move', () => {
  test.each(shapes)('$kind, skew $skew, share $share: begins at 0, ends at 1, never turns back', (shape) => {
    expect([-1, 0, 1, 2].map((time) => wayGone(shape, time))).toEqual([0, 0, 1, 1]);
    const steps = Array.from({ length: 1000 }, (_, i) => wayGone(shape, (i + 1) / 1000) - wayGone(shape, i / 1000));
    expect(Math.min(...steps)).toBeGreaterThanOrEqual(-1e-12);
  });

  test.each(shapes)('$kind, skew $skew, share $share: has no speed at either end', (shape) => {
    const step = 1e-5;
    expect(wayGone(shape, step) / step).toBeLessThan(1e-3);
    expect((1 - wayGone(shape, 1 - step)) / step).toBeLessThan(1e-3);
  });

  test.each(kinds)('%s without skew is half way at half time when its phases are alike', (kind) => {
    expect(Math.abs(wayGone(plain(kind), 0.5) - 0.5)).toBeLessThan(1e-12);
  });

  test('minimum jerk: 10u3 - 15u4 + 6u5 at a quarter is 53/512', () => {
    expect(wayGone(plain('minimum-jerk'), 0.25)).toBe(53 / 512);
  });

  test('a plateau moves at constant speed in its middle', () => {
    const shape: MoveShape = { kind: 'plateau', skew: 0, share: 0.3 };
    const speed = (time: number): number => (wayGone(shape, time + 0.01) - wayGone(shape, time)) / 0.01;
    expect(Math.abs(speed(0.4) - 1 / 0.7)).toBeLessThan(1e-9);
    expect(Math.abs(speed(0.6) - 1 / 0.7)).toBeLessThan(1e-9);
  });

  test('two phases have a slower moment between them', () => {
    const shape = plain('two-phase');
    const speed = (time: number): number => wayGone(shape, time + 0.005) - wayGone(shape, time - 0.005);
    expect(speed(0.5)).toBeLessThan(speed(0.33));
    expect(speed(0.5)).toBeLessThan(speed(0.67));
  });
});
