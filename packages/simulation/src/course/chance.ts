import { Random } from '../random.ts';

/** Numbers that look random and are the same for a seed. */
export interface Chance {
  /** from 0 up to 1, without it [1] */
  next(): number;
  /** around 0, mostly within one [1] */
  wobble(): number;
}

/** The stream of a course: what is drawn for it leaves every other stream of the seed as it is. */
const stream = 41;

/**
 * A chance of its own for a seed.
 *
 * @param seed - from 0 on [-]
 * @returns draws that follow from the seed alone [1]
 *
 * Source: ours; the numbers are those of `Random`
 */
export function chanceOf(seed: number): Chance {
  const random = new Random(seed, stream);
  const next = (): number => random.uniform();
  return { next, wobble: () => (next() + next() + next() - 1.5) * 1.2 };
}
