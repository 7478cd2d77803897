/** A stretch of a signal from a low over a high to the next low, by sample index. */
export interface Bump {
  readonly leftIndex: number;
  readonly topIndex: number;
  readonly rightIndex: number;
  /** levels at the three [unit of signal] */
  readonly left: number;
  readonly top: number;
  readonly right: number;
}

/** A high that may have to give way to its neighbour. */
export interface Turning {
  /** level of the high [unit of signal], and its place */
  readonly level: number;
  readonly index: number;
  /** place of the low between it and the higher neighbour */
  readonly lowIndex: number;
  /** place of that neighbour */
  readonly beyondIndex: number;
}

interface Turn {
  readonly index: number;
  readonly level: number;
}

/**
 * Highs of a signal with the lows between them, in time order: turns after which the signal goes the other way by at
 * least a given swing. The first and last sample serve as outer lows.
 *
 * @param signal - regularly sampled, low-passed, n >= 1 [any unit]
 * @param leastSwing - smaller turns are passed over, > 0 [unit of signal]
 * @returns bumps; neighbours share their low; empty for a signal without a turn [index, unit of signal]
 *
 * Source: ours (hysteresis turning points)
 */
export function findBumps(signal: Float64Array, leastSwing: number): Bump[] {
  const highs: Turn[] = [];
  const lows: Turn[] = [];
  let high = 0;
  let low = 0;
  let lowestBefore = 0;
  let rising: boolean | undefined;
  for (let i = 1; i < signal.length; i++) {
    if (signal[i] > signal[high]) high = i;
    if (signal[i] < signal[low]) low = i;
    if (rising === undefined) {
      if (signal[high] - signal[i] >= leastSwing) {
        lows.push({ index: lowestBefore, level: signal[lowestBefore] });
        highs.push({ index: high, level: signal[high] });
        rising = false;
        low = i;
      } else if (signal[i] - signal[low] >= leastSwing) {
        lowestBefore = low;
        lows.push({ index: low, level: signal[low] });
        rising = true;
        high = i;
      }
    } else if (rising && signal[high] - signal[i] >= leastSwing) {
      highs.push({ index: high, level: signal[high] });
      rising = false;
      low = i;
    } else if (!rising && signal[i] - signal[low] >= leastSwing) {
      lows.push({ index: low, level: signal[low] });
      rising = true;
      high = i;
    }
  }
  if (rising === true) highs.push({ index: high, level: signal[high] });
  if (rising !== undefined) {
    // After a last rise without a fall the outer low is the last sample, which may be the high itself.
    const last = rising ? signal.length - 1 : low;
    lows.push({ index: last, level: signal[last] });
  }
  return join(highs, lows);
}

function join(highs: readonly Turn[], lows: readonly Turn[]): Bump[] {
  return highs.map((top, i) => {
    const left = lows[i];
    const right = lows[i + 1];
    return {
      leftIndex: left.index,
      topIndex: top.index,
      rightIndex: right.index,
      left: left.level,
      top: top.level,
      right: right.level,
    };
  });
}

/** How much of a bump stands on its own: its height over the higher of the lows beside it. */
function ownRise(highs: readonly Turn[], lows: readonly Turn[], i: number): number {
  const left = lows[i].level;
  const right = lows[i + 1].level;
  // An outer low may be where the recording was cut, in mid-movement: then only the inner one speaks.
  const first = i === 0 && highs.length > 1 ? Math.min(left, right) : left;
  const last = i === highs.length - 1 && highs.length > 1 ? Math.min(left, right) : right;
  return highs[i].level - Math.max(i === 0 ? first : left, i === highs.length - 1 ? last : right);
}

/**
 * The bumps that are left when those that do not stand on their own are joined with a neighbour, smallest first. A dip at
 * the top goes together with the lower of its two highs, a bounce at the bottom together with the higher of its two lows.
 *
 * @param bumps - neighbouring bumps in time order [unit of signal]
 * @param leastRise - the rise that a bump must have over the higher of its lows, see {@link Turning} [unit of signal]
 * @returns the bumps that stand, neighbours sharing their low [index, unit of signal]
 *
 * Source: Edelsbrunner, Letscher & Zomorodian (2002), Discrete Comput Geom 28:511-533 (cancelling pairs by persistence)
 */
export function joinBumps(bumps: readonly Bump[], leastRise: (high: Turning) => number): Bump[] {
  const highs: Turn[] = bumps.map((bump) => ({ index: bump.topIndex, level: bump.top }));
  const lows: Turn[] = bumps.map((bump) => ({ index: bump.leftIndex, level: bump.left }));
  const last = bumps.at(-1);
  if (last === undefined) return [];
  lows.push({ index: last.rightIndex, level: last.right });
  for (let again = true; again && highs.length > 1; ) {
    again = false;
    for (let i = 0; i < highs.length && highs.length > 1; i++) {
      const rise = ownRise(highs, lows, i);
      const toRight = lows[i + 1].level >= lows[i].level;
      // At the ends only the inner low can be given up.
      const low = i === 0 ? i + 1 : i === highs.length - 1 ? i : toRight ? i + 1 : i;
      // It gives way to the high beyond that low, which must be the higher one.
      const beyond = low === i ? i - 1 : i + 1;
      if (highs[beyond].level < highs[i].level) continue;
      const turning = {
        level: highs[i].level,
        index: highs[i].index,
        lowIndex: lows[low].index,
        beyondIndex: highs[beyond].index,
      };
      if (rise >= leastRise(turning)) continue;
      const outer = i === 0 ? 0 : i === highs.length - 1 ? i + 1 : undefined;
      highs.splice(i, 1);
      if (outer !== undefined) {
        // The outer low stays the lower of the two.
        const inner = outer === 0 ? 1 : outer - 1;
        lows.splice(lows[outer].level <= lows[inner].level ? inner : outer, 1);
      } else lows.splice(low, 1);
      again = true;
      i--;
    }
  }
  return join(highs, lows);
}
