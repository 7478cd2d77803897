/** A stretch between two neighbouring samples in which at least one is missing. */
export interface Gap {
  /** time of the last sample before [s] */
  readonly fromS: number;
  /** time of the first sample after [s] */
  readonly toS: number;
  /** how many samples fit in between at the median interval */
  readonly missingCount: number;
}

/** Median of the intervals between neighbouring times, at least two times [s]. */
export function medianIntervalS(timesS: Float64Array): number {
  const intervals = new Float64Array(timesS.length - 1);
  for (let i = 0; i < intervals.length; i += 1) intervals[i] = timesS[i + 1]! - timesS[i]!;
  intervals.sort();
  const middle = intervals.length >> 1;
  return intervals.length % 2 === 1 ? intervals[middle]! : (intervals[middle - 1]! + intervals[middle]!) / 2;
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
