import fc from 'fast-check';

/** Values of ordinary size that a signal may take: no NaN, no infinity, no negative zero, no digits below a millionth. */
export const arbitraryValue = fc
  .double({ min: -1000, max: 1000, noNaN: true })
  .map((x) => Math.round(x * 1e6) / 1e6 + 0);

/** A signal of the given lengths. */
export function arbitrarySignal(minLength: number, maxLength: number): fc.Arbitrary<Float64Array> {
  return fc.array(arbitraryValue, { minLength, maxLength }).map((values) => Float64Array.from(values));
}

/** Strictly rising times, uneven. */
export function arbitraryTimes(minLength: number, maxLength: number): fc.Arbitrary<Float64Array> {
  const interval = fc.integer({ min: 1, max: 200 }).map((ms) => ms / 1000);
  return fc
    .tuple(fc.integer({ min: -1000, max: 1000 }), fc.array(interval, { minLength, maxLength }))
    .map(([startS, intervals]) => {
      let timeS = startS;
      return Float64Array.from(intervals, (interval) => (timeS += interval));
    });
}

/** Lengths of blocks that a signal is cut into, from single samples to more than the whole. */
export const arbitraryBlockSizes = fc.array(
  fc.oneof(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 8, max: 700 })),
  {
    minLength: 1,
    maxLength: 40,
  },
);
