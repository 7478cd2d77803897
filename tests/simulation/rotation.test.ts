import { expect, test } from 'vitest';
import { Random } from '../../packages/simulation/src/random.ts';
import { drawRotation, rotate } from '../../packages/simulation/src/rotation.ts';

test('a drawn rotation keeps lengths, angles and handedness', () => {
  for (let seed = 0; seed < 50; seed++) {
    const rotation = drawRotation(new Random(seed, 0));
    const [x, y, z] = [rotate(rotation, 1, 0, 0), rotate(rotation, 0, 1, 0), rotate(rotation, 0, 0, 1)];
    const dot = (a: number[], b: number[]): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    for (const axis of [x, y, z]) expect(Math.abs(dot(axis, axis) - 1)).toBeLessThan(1e-12);
    expect(Math.abs(dot(x, y))).toBeLessThan(1e-12);
    const cross = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
    expect(Math.abs(dot(cross, z) - 1)).toBeLessThan(1e-12);
  }
});

test('drawn rotations point up in every direction alike', () => {
  const count = 4000;
  const sums = [0, 0, 0];
  const squares = [0, 0, 0];
  for (let seed = 0; seed < count; seed++) {
    rotate(drawRotation(new Random(seed, 1)), 0, 0, 1).forEach((value, axis) => {
      sums[axis] += value / count;
      squares[axis] += (value * value) / count;
    });
  }
  for (const sum of sums) expect(Math.abs(sum)).toBeLessThan(4 * Math.sqrt(1 / 3 / count));
  for (const square of squares) expect(Math.abs(square - 1 / 3)).toBeLessThan(4 * Math.sqrt(4 / 45 / count));
});
