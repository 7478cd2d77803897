/** Samples that pile up at a limit of the sensor. */
export interface Rail {
  /** the limit [unit of samples] */
  readonly value: number;
  /** samples at the limit [-] */
  readonly count: number;
  /** first sample at the limit, and one past the last [index] */
  readonly fromIndex: number;
  readonly toIndex: number;
}

/** Equal values in a row that make one stay at the limit, and such stays that make a limit [-]; ours. */
const STAY_LENGTH = 3;
const STAYS = 2;
/** How many times more samples lie at a limit than on the next values before it [-]; ours. */
const PILE = 3;
/** That many of the next values are looked at [-]; ours. */
const NEXT_VALUES = 3;

/**
 * Where a signal sits at its greatest value as a sensor at its limit does.
 *
 * A signal that turns by itself reaches its greatest value once, or lingers on the values just before it as well. At a
 * limit the same value comes several times in a row, more than once, and far more often than the values before it.
 *
 * @param samples - of one channel [any]
 * @returns the limit and its samples; undefined when the signal turns by itself [unit of samples, index]
 *
 * Source: ours
 */
export function upperRail(samples: Float64Array): Rail | undefined {
  return railOf(samples, 1);
}

/**
 * Where a signal sits at its least value as a sensor at its limit does, see {@link upperRail}.
 *
 * @param samples - of one channel [any]
 * @returns the limit and its samples; undefined when the signal turns by itself [unit of samples, index]
 *
 * Source: ours
 */
export function lowerRail(samples: Float64Array): Rail | undefined {
  const rail = railOf(samples, -1);
  return rail && { ...rail, value: -rail.value };
}

/** The limit above the samples, or above their negatives where the sign is -1. */
function railOf(samples: Float64Array, sign: 1 | -1): Rail | undefined {
  let value = -Infinity;
  let [count, stays, run, fromIndex, toIndex] = [0, 0, 0, -1, 0];
  for (let i = 0; i < samples.length; i++) {
    const sample = sign * samples[i];
    if (!(sample >= value)) {
      run = 0;
      continue;
    }
    if (sample > value) {
      value = sample;
      [count, stays, run, fromIndex] = [0, 0, 0, i];
    }
    count++;
    run++;
    if (run === STAY_LENGTH) stays++;
    toIndex = i + 1;
  }
  // what never moves has no limit but its only value
  if (stays < STAYS || count === samples.length) return undefined;
  let below = value;
  for (let next = 0; next < NEXT_VALUES; next++) {
    below = nextBelow(samples, sign, below);
    if (PILE * countOf(samples, sign * below) > count) return undefined;
  }
  return { value, count, fromIndex, toIndex };
}

function nextBelow(samples: Float64Array, sign: 1 | -1, limit: number): number {
  let nearest = -Infinity;
  for (let i = 0; i < samples.length; i++) {
    const sample = sign * samples[i];
    if (sample < limit && sample > nearest) nearest = sample;
  }
  return nearest;
}

function countOf(samples: Float64Array, value: number): number {
  let count = 0;
  for (let i = 0; i < samples.length; i++) if (samples[i] === value) count++;
  return count;
}
