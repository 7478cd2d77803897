/** When the agreement of raters is worked out at all. */
export interface BlindSettings {
  /** recordings below which no correlation of counts is given [-] */
  readonly leastSets: number;
  /** repetitions below which no kappa is given [-] */
  readonly leastRepetitions: number;
  /** of every interval [-] */
  readonly level: number;
  /** marks of one recording that lie no further apart are of the same repetition [s] */
  readonly sameWithinS: number;
}

/**
 * The usual ones: 5 recordings and 10 repetitions are common practice, no source; 95 % is the level of all intervals here. Half a second
 * is a quarter of a repetition at 30 a minute, so that a mark anywhere around a top is of that top and of no other; no source.
 */
export const blindDefaults: BlindSettings = { leastSets: 5, leastRepetitions: 10, level: 0.95, sameWithinS: 0.5 };
