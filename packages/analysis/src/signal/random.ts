import { requireRange } from '../check.ts';

/** A source of numbers, each evenly spread over 0 (included) to 1 (not included). */
export type Random = () => number;

/**
 * A source of evenly spread random numbers that gives the same sequence for the same seed, on every machine.
 *
 * xoshiro128** with its state filled by splitmix32; two outputs make one number of 53 bits.
 *
 * @param seed - a whole number; the low 32 bits count [-]
 * @returns a function that gives the next number, 0 <= u < 1 [-]
 * @throws {@link InputError} `out-of-range` when the seed is not a whole number
 *
 * Source: Blackman & Vigna (2021), Scrambled linear pseudorandom number generators, ACM Trans Math Softw 47(4):36
 */
export function createRandom(seed: number): Random {
  requireRange(seed, Number.isSafeInteger(seed), 'seed', 'a whole number');
  let mixed = seed | 0;
  const split = (): number => {
    mixed = (mixed + 0x9e3779b9) | 0;
    let word = mixed ^ (mixed >>> 16);
    word = Math.imul(word, 0x21f0aaad);
    word ^= word >>> 15;
    word = Math.imul(word, 0x735a2d97);
    return word ^ (word >>> 15);
  };
  let s0 = split();
  let s1 = split();
  let s2 = split();
  let s3 = split();
  const word = (): number => {
    const scrambled = Math.imul(s1, 5);
    const output = Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    return output;
  };
  return () => {
    const high = word() >>> 5;
    const low = word() >>> 6;
    return (high * 67108864 + low) / 9007199254740992;
  };
}

/**
 * A random number from the standard normal distribution.
 *
 * @param random - source of even numbers; two or more are used up [-]
 * @returns the number [-]
 *
 * Source: Marsaglia & Bray (1964), A convenient method for generating normal variables, SIAM Rev 6:260-264
 */
export function gaussian(random: Random): number {
  for (;;) {
    const u = 2 * random() - 1;
    const v = 2 * random() - 1;
    const square = u * u + v * v;
    if (square > 0 && square < 1) return u * Math.sqrt((-2 * Math.log(square)) / square);
  }
}
