import { describe, expect, test } from 'vitest';
import { Random } from '../../packages/simulation/src/random.ts';

const draw = (count: number, next: () => number): number[] => Array.from({ length: count }, next);

describe('sfc32', () => {
  test('follows the published recursion, written out with big integers', () => {
    const mask = 0xffffffffn;
    const random = new Random(12345, 7);
    let [a, b, c, counter] = [12345n, 0n, 7n, 1n];
    const slow = (): bigint => {
      const out = (a + b + counter) & mask;
      counter = (counter + 1n) & mask;
      a = b ^ (b >> 9n);
      b = (c + (c << 3n)) & mask;
      c = ((((c << 21n) | (c >> 11n)) & mask) + out) & mask;
      return out;
    };
    for (let i = 0; i < 16; i++) slow();
    expect(draw(2000, () => random.word())).toEqual(draw(2000, () => Number(slow())));
  });

  test('gives the same numbers for the same seed and others for another seed or stream', () => {
    const numbers = (seed: number, stream: number): number[] => {
      const random = new Random(seed, stream);
      return draw(50, () => random.uniform());
    };
    expect(numbers(1, 1)).toEqual(numbers(1, 1));
    expect(numbers(1, 1)).not.toEqual(numbers(2, 1));
    expect(numbers(1, 1)).not.toEqual(numbers(1, 2));
    expect(numbers(1, 1)).not.toEqual(numbers(1 + 2 ** 32, 1));
  });

  test('fills twenty boxes evenly: chi-square of 200 000 draws', () => {
    const random = new Random(99, 0);
    const boxes = new Array<number>(20).fill(0);
    for (let i = 0; i < 200_000; i++) boxes[Math.floor(20 * random.uniform())] += 1;
    const chiSquare = boxes.reduce((sum, box) => sum + (box - 10_000) ** 2 / 10_000, 0);
    expect(chiSquare).toBeLessThan(43.8); // 0.1 % point with 19 degrees of freedom
    expect(chiSquare).toBeGreaterThan(5.4); // 99.9 % point
  });

  test('has no memory from one draw to the next', () => {
    const random = new Random(5, 0);
    const values = draw(100_000, () => random.uniform() - 0.5);
    const product = values.slice(1).reduce((sum, value, i) => sum + value * values[i], 0) / 99_999;
    expect(Math.abs(product * 12)).toBeLessThan(4 / Math.sqrt(99_999));
  });
});

describe('draws', () => {
  test('normal numbers have mean 0, variance 1, kurtosis 3 within four standard errors', () => {
    const random = new Random(3, 0);
    const count = 200_000;
    const values = draw(count, () => random.gaussian());
    const moment = (power: number): number => values.reduce((sum, value) => sum + value ** power, 0) / count;
    expect(Math.abs(moment(1))).toBeLessThan(4 / Math.sqrt(count));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.sqrt(2 / count));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96 / count));
  });

  test('bounded normal numbers stay within two and a half', () => {
    const random = new Random(3, 0);
    expect(Math.max(...draw(5000, () => Math.abs(random.boundedGaussian())))).toBeLessThanOrEqual(2.5);
  });

  test('whole numbers reach both bounds and nothing else', () => {
    const random = new Random(8, 0);
    expect([...new Set(draw(500, () => random.integer(2, 4)))].sort()).toEqual([2, 3, 4]);
  });

  test('log-uniform numbers have their median at the geometric mean', () => {
    const random = new Random(8, 0);
    const share = draw(20_000, () => random.logBetween(1, 100)).filter((value) => value < 10).length / 20_000;
    expect(Math.abs(share - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / 20_000));
  });

  test('weighted choice follows the weights', () => {
    const random = new Random(8, 0);
    const picks = draw(20_000, () =>
      random.weighted([
        [0, 3],
        [1, 1],
      ] as const),
    );
    const share = picks.filter((pick) => pick === 1).length / 20_000;
    expect(Math.abs(share - 0.25)).toBeLessThan(4 * Math.sqrt(0.1875 / 20_000));
  });
});
