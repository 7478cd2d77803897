import { expect, test } from 'vitest';
import { countBounds } from '../../../../packages/analysis/src/raises/heel/count-bounds.ts';

test('sure trials leave nothing open', () => {
  expect(countBounds([1, 1, 1, 0], 0.95)).toEqual({ low: 3, high: 3 });
  expect(countBounds([], 0.95)).toEqual({ low: 0, high: 0 });
});

test('one even chance spans two numbers', () => {
  expect(countBounds([1, 1, 0.5], 0.95)).toEqual({ low: 2, high: 3 });
});

test('agrees with every outcome counted one by one', () => {
  const chances = [0.9, 0.3, 0.55, 0.02, 0.97, 0.8];
  const share = new Array<number>(7).fill(0);
  for (let mask = 0; mask < 64; mask++) {
    let chance = 1;
    let hits = 0;
    chances.forEach((p, i) => {
      const hit = (mask >> i) & 1;
      hits += hit;
      chance *= hit === 1 ? p : 1 - p;
    });
    share[hits] += chance;
  }
  const below = (n: number): number => share.slice(0, n).reduce((a, b) => a + b, 0);
  const { low, high } = countBounds(chances, 0.95);
  expect(below(low)).toBeLessThanOrEqual(0.025);
  expect(below(low + 1)).toBeGreaterThan(0.025);
  expect(1 - below(high + 1)).toBeLessThanOrEqual(0.025);
  expect(1 - below(high)).toBeGreaterThan(0.025);
});

test('a chance of 4 % stays within 95 % with equal tails, one of 2 % does not', () => {
  expect(countBounds([1, 0.04], 0.95)).toEqual({ low: 1, high: 2 });
  expect(countBounds([1, 0.02], 0.95)).toEqual({ low: 1, high: 1 });
});
