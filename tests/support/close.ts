import { expect } from 'vitest';

export interface Tolerance {
  /** allowed difference as a share of the expected value */
  readonly rtol: number;
  /** allowed difference in the unit of the values */
  readonly atol: number;
}

/** What is wrong with the received list, or undefined when every value is close. */
export function farFrom(
  received: ArrayLike<number>,
  expected: ArrayLike<number>,
  { rtol, atol }: Tolerance,
): string | undefined {
  if (received.length !== expected.length) return `expected ${expected.length} values, got ${received.length}`;
  let worstIndex = -1;
  let worst = 0;
  for (let i = 0; i < expected.length; i++) {
    if (Number.isNaN(expected[i]) && Number.isNaN(received[i])) continue;
    if (received[i] === expected[i]) continue;
    const share = Math.abs(received[i] - expected[i]) / (atol + rtol * Math.abs(expected[i]));
    // a NaN on one side only must not slip through a comparison that NaN makes false
    if (!(share <= 1) && !(share <= worst)) {
      worst = Number.isNaN(share) ? Infinity : share;
      worstIndex = i;
    }
  }
  if (worstIndex < 0) return undefined;
  return `value ${worstIndex} of ${expected.length}: expected ${expected[worstIndex]}, got ${received[worstIndex]} (rtol ${rtol}, atol ${atol})`;
}

expect.extend({
  toBeCloseToEach(received: ArrayLike<number>, expected: ArrayLike<number>, tolerance: Tolerance) {
    const problem = farFrom(received, expected, tolerance);
    return {
      pass: problem === undefined,
      message: () => problem ?? 'every value is close, and at least one should not be',
    };
  },
});

declare module 'vitest' {
  interface Matchers<T> {
    /** Every value within atol + rtol |expected|; length and NaN must agree. */
    toBeCloseToEach(expected: ArrayLike<number>, tolerance: Tolerance): T;
  }
}
