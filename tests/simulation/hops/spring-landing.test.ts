import { expect, test } from 'vitest';
import { compression, deepest, halfToDepth, springHalf } from '../../../packages/simulation/src/hops/spring-landing.ts';

test('energy at the deepest point is that at the ground: m g x + m v^2 / 2 = k x^2 / 2', () => {
  const x = deepest(70, 20_000, 1.2);
  expect(70 * 9.80665 * x + (70 * 1.44) / 2).toBeCloseTo(10_000 * x * x, 9);
});

test('the compression obeys the spring: begins at 0 with the speed, ends at the depth with none', () => {
  const half = springHalf(70, 20_000, 1.2);
  expect(compression(half, 70, 0)).toBe(0);
  expect((compression(half, 70, 1e-6) - 0) / 1e-6).toBeCloseTo(1.2, 4);
  expect(compression(half, 70, half.durationS)).toBeCloseTo(half.depthM, 12);
  expect(half.depthM - compression(half, 70, half.durationS - 1e-4)).toBeLessThan(1e-6);
});

test('a half to a depth reaches it', () => {
  expect(halfToDepth(70, 0.1, 1.3).depthM).toBeCloseTo(0.1, 12);
});
