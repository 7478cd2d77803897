/** A stretch between two neighbouring samples in which at least one is missing. */
export interface Gap {
  /** time of the last sample before [s] */
  readonly fromS: number;
  /** time of the first sample after [s] */
  readonly toS: number;
  /** how many samples fit in between at the median interval */
  readonly missingCount: number;
}

/** A clock that ticks evenly has few different intervals: the median of so many is mostly that of all. */
const SOME_INTERVALS = 10_000;

/** Median of the intervals between neighbouring times, at least two times [s]. */
export function medianIntervalS(timesS: Float64Array): number {
  const stride = Math.max(1, Math.floor((timesS.length - 1) / SOME_INTERVALS));
  const guessS = medianOfEvery(stride, timesS);
  return stride === 1 || isMedian(guessS, timesS) ? guessS : medianOfEvery(1, timesS);
}

/** Median of every so many intervals, from the first on [s]. */
function medianOfEvery(stride: number, timesS: Float64Array): number {
  const intervals = new Float64Array(Math.ceil((timesS.length - 1) / stride));
  for (let i = 0; i < intervals.length; i += 1) intervals[i] = timesS[i * stride + 1]! - timesS[i * stride]!;
  intervals.sort();
  const middle = intervals.length >> 1;
  return intervals.length % 2 === 1 ? intervals[middle]! : (intervals[middle - 1]! + intervals[middle]!) / 2;
}

/** Whether fewer than half of the intervals lie on either side of one: then it is their median, and sorting finds no other. */
function isMedian(intervalS: number, timesS: Float64Array): boolean {
  let below = 0;
  let above = 0;
  for (let i = 1; i < timesS.length; i += 1) {
    const otherS = timesS[i]! - timesS[i - 1]!;
    if (otherS < intervalS) below += 1;
    else if (otherS > intervalS) above += 1;
  }
  return 2 * Math.max(below, above) < timesS.length - 1;
}

/**
 * Intervals of at least 1.5 medians: rounded to whole medians, one sample or more is missing. Data, not a verdict: what
 * length of gap matters is for the analysis to say.
 */
export function listGaps(timesS: Float64Array, medianS: number): Gap[] {
  const gaps: Gap[] = [];
  for (let i = 1; i < timesS.length; i += 1) {
    const intervals = (timesS[i]! - timesS[i - 1]!) / medianS;
    if (intervals >= 1.5)
      gaps.push({ fromS: timesS[i - 1]!, toS: timesS[i]!, missingCount: Math.round(intervals) - 1 });
  }
  return gaps;
}
