/** Even random numbers between 0 and 1, the same in every run; xorshift32, Marsaglia (2003), J Stat Softw 8(14). */
export function uniformNumbers(seed) {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return ((state >>> 0) + 0.5) / 2 ** 32;
  };
}
