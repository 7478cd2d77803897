import { expect, test } from 'vitest';
import { startsAtSpeed } from '../../../../packages/analysis/src/raises/heel/at-speed.ts';
import { minimumJerk, moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';

const shapes = [minimumJerk, { start: 1, end: 1, spread: 0, tilt: 0 }].map((exponents) => moveShape(exponents));
const timesS = Float64Array.from({ length: 80 }, (_, i) => i * 0.025);
const white = whitening({ swaySdM: 0.001, swayTimeS: 0.3, whiteSdM: 0.001 }, 0.025, new Float64Array(80).fill(1));
const guess = { startS: 0.35, highFromS: 0.9, highToS: 1.1, endS: 1.65, before: 0, top: 0.1, after: 0 };
const between = (u: number): number => Math.min(1, Math.max(0, u));

test.each([1, 0.7, 0.5])('a string drawn as a sine to the power %d starts at speed', (power) => {
  const level = timesS.map((time) => 0.1 * Math.sin(Math.PI * between((time - 0.4) / 1.2)) ** power);
  expect(startsAtSpeed({ timesS, level, whitening: white }, guess, shapes)).toBeGreaterThan(1);
});

test.each([
  ['raised cosine', (u: number) => (1 - Math.cos(2 * Math.PI * u)) / 2],
  [
    'minimum jerk there and back',
    (u: number) => {
      const v = u < 0.5 ? 2 * u : 2 - 2 * u;
      return v ** 3 * (10 - 15 * v + 6 * v * v);
    },
  ],
])('a %s does not', (_, shape) => {
  const level = timesS.map((time) => 0.1 * shape(between((time - 0.3) / 1.4)));
  expect(startsAtSpeed({ timesS, level, whitening: white }, guess, shapes)).toBeLessThan(-1);
});
