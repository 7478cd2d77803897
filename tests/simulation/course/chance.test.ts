import { chanceOf } from '@surae/simulation';
import { expect, test } from 'vitest';

function draws(seed: number): readonly number[] {
  const chance = chanceOf(seed);
  return Array.from({ length: 2000 }, (_, i) => (i % 2 === 0 ? chance.next() : chance.wobble()));
}

test('a seed has its own draws, and the same ones each time', () => {
  expect(draws(3)).toEqual(draws(3));
  expect(draws(3)).not.toEqual(draws(4));
});

test('one lies from 0 up to 1, the other around 0', () => {
  const all = draws(7);
  const [ones, wobbles] = [all.filter((_, i) => i % 2 === 0), all.filter((_, i) => i % 2 === 1)];
  for (const one of ones) expect(one >= 0 && one < 1).toBe(true);
  // sum of three uniform numbers less 1.5, times 1.2: within 1.8, its standard deviation 1.2 * sqrt(3 / 12) = 0.6
  for (const one of wobbles) expect(Math.abs(one)).toBeLessThan(1.8);
  const mean = wobbles.reduce((sum, one) => sum + one, 0) / wobbles.length;
  expect(Math.abs(mean)).toBeLessThan((5 * 0.6) / Math.sqrt(wobbles.length));
});
