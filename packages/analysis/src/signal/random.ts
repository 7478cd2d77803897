import { requireRange } from '../check.ts';

/** A source of numbers, each evenly spread over 0 (included) to 1 (not included). */
export type Random = () => number;

/**
 * Evenly spread random numbers, the same sequence for the same seed on every machine.
 *
 * xoshiro128** with its state filled by splitmix32; two outputs make one number of 53 bits. For loops of very many draws: a method
 * is compiled into the loop that calls it, a function that was handed over is not.
 *
 * Source: Blackman & Vigna (2021), Scrambled linear pseudorandom number generators, ACM Trans Math Softw 47(4):36
 */
export class RandomNumbers {
  private readonly state: Int32Array;

  /**
   * Throws an {@link InputError} `out-of-range` when the seed is not a whole number.
   *
   * @param seed - a whole number; the low 32 bits count [-]
   */
  constructor(seed: number) {
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
    this.state = Int32Array.of(split(), split(), split(), split());
  }

  /** The next number, 0 <= u < 1. */
  next(): number {
    const high = this.word() >>> 5;
    const low = this.word() >>> 6;
    return (high * 67108864 + low) / 9007199254740992;
  }

  private word(): number {
    const { state } = this;
    const s1 = state[1];
    const scrambled = Math.imul(s1, 5);
    const output = Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
    const s2 = state[2] ^ state[0];
    const s3 = state[3] ^ s1;
    state[1] = s1 ^ s2;
    state[0] = state[0] ^ s3;
    state[2] = s2 ^ (s1 << 9);
    state[3] = (s3 << 11) | (s3 >>> 21);
    return output;
  }
}

/**
 * A source of evenly spread random numbers that gives the same sequence for the same seed, on every machine.
 *
 * @param seed - a whole number; the low 32 bits count [-]
 * @returns a function that gives the next number, 0 <= u < 1 [-]
 * @throws {@link InputError} `out-of-range` when the seed is not a whole number
 *
 * Source: as {@link RandomNumbers}
 */
export function createRandom(seed: number): Random {
  const numbers = new RandomNumbers(seed);
  return () => numbers.next();
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
