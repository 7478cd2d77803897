import { expect, test } from 'vitest';
import {
  componentAlong,
  cross,
  dot,
  principalAxis,
  tiltInPlane,
  turningPlane,
  unit,
  type Vector,
  type VectorSignal,
  weightedMean,
} from '../../../packages/analysis/src/movement/orientation.ts';

test('products and length follow their definitions', () => {
  expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
  expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
  expect(unit([0, 3, 4])).toEqual([0, 0.6, 0.8]);
  expect(unit([0, 0, 0])).toBeUndefined();
});

test('the mean counts each sample by its weight', () => {
  const signal: VectorSignal = [Float64Array.of(0, 4), Float64Array.of(2, 2), Float64Array.of(8, 0)];
  expect(weightedMean(signal, Float64Array.of(3, 1))).toEqual([1, 2, 6]);
});

test('the principal axis is the direction of most spread, also across a given one', () => {
  const times = Array.from({ length: 100 }, (_, i) => i);
  const along: Vector = [2 / 3, 2 / 3, 1 / 3];
  const signal: VectorSignal = [0, 1, 2].map((k) =>
    Float64Array.from(times, (i) => 5 * Math.sin(i) * along[k] + (k === 2 ? 20 * Math.cos(1.7 * i) : 0)),
  ) as unknown as VectorSignal;
  const ones = new Float64Array(100).fill(1);
  expect(Math.abs(principalAxis(signal, ones, [0, 0, 0])![2])).toBeGreaterThan(0.95);
  const across = principalAxis(signal, ones, [0, 0, 0], [0, 0, 1])!;
  expect(Math.abs(Math.abs(dot(across, [Math.SQRT1_2, Math.SQRT1_2, 0])) - 1)).toBeLessThan(1e-9);
  expect(principalAxis(signal, new Float64Array(100), [0, 0, 0])).toBeUndefined();
});

test('the tilt is the turn of gravity about the axis', () => {
  const angles = [0, 0.3, -0.5, 1.2];
  const force: VectorSignal = [
    Float64Array.from(angles, (angle) => 9.8 * Math.sin(angle)),
    new Float64Array(4),
    Float64Array.from(angles, (angle) => 9.8 * Math.cos(angle)),
  ];
  const plane = turningPlane([0, 1, 0], [0, 0, 9.8])!;
  tiltInPlane(force, plane).forEach((value, i) => {
    expect(Math.abs(value - angles[i])).toBeLessThan(1e-12);
  });
  expect(turningPlane([0, 0, 1], [0, 0, 9.8])).toBeUndefined();
  expect([...componentAlong(force, [0, 0, 1])].map((value) => Math.sign(value))).toEqual([1, 1, 1, 1]);
});
