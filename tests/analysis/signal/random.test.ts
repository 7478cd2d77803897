import { expect, test } from 'vitest';
import { mean, standardDeviation } from '../../../packages/analysis/src/signal/moments.ts';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';
import { readReference } from '../../support/fixture.ts';

test('gives the sequence of the same generator written in integers of any length', () => {
  const { input, expected } = readReference<number[], number[][]>('random.sequence');
  const sequences = input.map((seed) => {
    const random = createRandom(seed);
    return Array.from({ length: 12 }, () => random());
  });
  expect(sequences).toEqual(expected);
});

test('the same seed gives the same numbers, another seed others', () => {
  const [a, b, c] = [createRandom(5), createRandom(5), createRandom(6)];
  const first = a();
  expect(b()).toBe(first);
  expect(c()).not.toBe(first);
});

test('numbers fill the ten tenths of 0 to 1 evenly', () => {
  const random = createRandom(1);
  const counts = new Array<number>(10).fill(0);
  for (let i = 0; i < 20000; i++) counts[Math.floor(10 * random())] += 1;
  const chiSquare = counts.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0);
  // the 0.1 % point of chi-square with 9 degrees of freedom
  expect(chiSquare).toBeLessThan(27.88);
});

test('normal numbers have mean 0, spread 1 and 5 % beyond 1.96', () => {
  const random = createRandom(2);
  const drawn = Array.from({ length: 20000 }, () => gaussian(random));
  // four standard errors each
  expect(Math.abs(mean(drawn))).toBeLessThan(4 / Math.sqrt(20000));
  expect(Math.abs(standardDeviation(drawn) - 1)).toBeLessThan(4 / Math.sqrt(40000));
  const beyond = drawn.filter((z) => Math.abs(z) > 1.959964).length;
  expect(Math.abs(beyond - 1000)).toBeLessThan(4 * Math.sqrt(950));
});

test('a seed that is not a whole number is refused', () => {
  for (const seed of [0.5, Number.NaN, Infinity]) {
    expect(() => createRandom(seed)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  }
});
