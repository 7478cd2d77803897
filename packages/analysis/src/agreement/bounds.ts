/** An interval that holds the true value in a given share of samples. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** An estimate with its interval. */
export interface Bounded extends Bounds {
  readonly value: number;
}
