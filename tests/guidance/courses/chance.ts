/** Numbers that look random and are the same for a seed. */
export interface Chance {
  /** from 0 up to 1, without it */
  next(): number;
  /** around 0, mostly within one */
  wobble(): number;
}

/** A chance of its own for a seed. Source: mulberry32, a public-domain generator */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return { next, wobble: () => (next() + next() + next() - 1.5) * 1.2 };
}
