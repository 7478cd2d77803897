/** A span of time on the recording's clock, half-open [s]. */
export interface Interval {
  readonly fromS: number;
  readonly toS: number;
}
