import { InputError } from './errors.ts';

/**
 * Nothing; refuses a signal shorter than the method needs.
 *
 * @param samples - the signal [unit of samples]
 * @param leastCount - fewest samples that the method can use, >= 0 [-]
 * @param argument - name of the argument, for the message [-]
 * @returns nothing [-]
 * @throws {@link InputError} `too-short` when there are fewer samples
 *
 * Source: ours
 */
export function requireCount(samples: ArrayLike<unknown>, leastCount: number, argument: string): void {
  if (samples.length < leastCount) {
    throw new InputError('too-short', { argument, expected: `n >= ${leastCount}`, actual: `n = ${samples.length}` });
  }
}

/** Whether all are: nothing times an infinity or NaN is NaN, and so is the sum. One kind of array alone is quickly read. */
function areFinite(samples: Float64Array): boolean {
  let sum = 0;
  for (let i = 0; i < samples.length; i++) sum += 0 * samples[i];
  return sum === 0;
}

/**
 * Nothing; refuses a signal that holds NaN or infinity, naming the first place.
 *
 * @param samples - the signal [unit of samples]
 * @param argument - name of the argument, for the message [-]
 * @returns nothing [-]
 * @throws {@link InputError} `not-finite` on NaN or infinity
 *
 * Source: ours
 */
export function requireFinite(samples: ArrayLike<number>, argument: string): void {
  if (samples instanceof Float64Array && areFinite(samples)) return;
  for (let i = 0; i < samples.length; i++) {
    if (!Number.isFinite(samples[i])) {
      throw new InputError('not-finite', {
        argument,
        expected: 'finite samples',
        actual: `${samples[i]} at index ${i}`,
      });
    }
  }
}

/**
 * Nothing; refuses two arrays that belong together and differ in length.
 *
 * @param first - the one array [unit of first]
 * @param second - the other array [unit of second]
 * @param argument - name of the second argument, for the message [-]
 * @returns nothing [-]
 * @throws {@link InputError} `length-mismatch` when the lengths differ
 *
 * Source: ours
 */
export function requireSameLength(first: ArrayLike<unknown>, second: ArrayLike<unknown>, argument: string): void {
  if (first.length !== second.length) {
    throw new InputError('length-mismatch', {
      argument,
      expected: `length ${first.length}`,
      actual: `length ${second.length}`,
    });
  }
}

/**
 * Nothing; refuses a number that is not finite or does not meet its condition.
 *
 * @param value - the number [unit of value]
 * @param holds - whether the condition is met [-]
 * @param argument - name of the argument, for the message [-]
 * @param expected - the condition in words, for the message [-]
 * @returns nothing [-]
 * @throws {@link InputError} `out-of-range` when the number is not finite or the condition is not met
 *
 * Source: ours
 */
export function requireRange(value: number, holds: boolean, argument: string, expected: string): void {
  if (!holds || !Number.isFinite(value)) {
    throw new InputError('out-of-range', { argument, expected, actual: String(value) });
  }
}

/**
 * Nothing; refuses sample times that stand still or run back, or that are not numbers.
 *
 * @param timesS - sample times [s]
 * @param argument - name of the argument, for the message [-]
 * @returns nothing [-]
 * @throws {@link InputError} `not-finite` on NaN or infinity; `not-increasing` when a time is not later than the one before
 *
 * Source: ours
 */
export function requireIncreasing(timesS: ArrayLike<number>, argument: string): void {
  requireFinite(timesS, argument);
  for (let i = 1; i < timesS.length; i++) {
    if (timesS[i] <= timesS[i - 1]) {
      throw new InputError('not-increasing', {
        argument,
        expected: 'each time later than the one before',
        actual: `${timesS[i]} after ${timesS[i - 1]} at index ${i}`,
      });
    }
  }
}
