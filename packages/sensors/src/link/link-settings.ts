/** When a lost connection is sought again, and for how long. All ours, but for the limit. */
export interface LinkSettings {
  /** after this long an attempt to connect is given up: some systems never answer [ms] */
  readonly connectMs: number;
  /** waits before the attempts to connect again; after the last the same again [ms] */
  readonly backOffMs: readonly number[];
  /** a stretch without samples up to this one stays in the recording; a longer one ends it [ms] */
  readonly longestHoleMs: number;
  /** how often samples are handed on [ms] */
  readonly everyMs: number;
  /** whether a stream that no number ties in goes on after a new connection */
  readonly goesOnUntold: boolean;
}

/** The limit of 10 s: common practice, no source; the others ours. */
export const linkSettings: LinkSettings = {
  connectMs: 4000,
  backOffMs: [250, 500, 1000, 2000],
  longestHoleMs: 10_000,
  everyMs: 16,
  goesOnUntold: false,
};
