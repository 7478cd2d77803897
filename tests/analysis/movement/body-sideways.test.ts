import { expect, test } from 'vitest';
import { sidewaysPower, travelMarks } from '../../../packages/analysis/src/movement/body-sideways.ts';

const count = 2000;
const wave = (size: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => size * Math.sin((2 * Math.PI * 1.8 * i) / 100));
const still = new Float64Array(count);
const gravity = new Float64Array(count).fill(9.81);

test('sideways 1 m/s2 at 1.8 Hz has a mean square near 0.5, whichever axis gravity lies on', () => {
  const upright = sidewaysPower([wave(1), still, gravity], 100, 1.1);
  expect(upright[1000]).toBeGreaterThan(0.4);
  expect(upright[1000]).toBeLessThan(0.75);
  const turned = sidewaysPower([gravity, wave(1), still], 100, 1.1);
  expect(turned[1000]).toBeCloseTo(upright[1000], 9);
});

test('up and down along gravity leaves nothing sideways', () => {
  const up = gravity.map((value, i) => value + wave(1)[i]);
  expect(sidewaysPower([still, still, up], 100, 1)[1000]).toBeLessThan(1e-12);
});

test('sideways as strong as up and down is travel; weak, or a small share of a quick rise, is not', () => {
  const options = { travelWindowS: 1.1, mostSideways: 0.3, mostSidewaysShare: 0.28 };
  const power = new Float64Array(count).fill(0.5);
  expect(travelMarks(power, wave(1), 100, options)[1000]).toBe(1);
  expect(travelMarks(power.fill(0.2), wave(0.5), 100, options)[1000]).toBe(0);
  expect(travelMarks(power.fill(0.5), wave(4), 100, options)[1000]).toBe(0);
});
