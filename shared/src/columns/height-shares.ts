/** Shares of the reference for the first repetition below. Common practice, no source. */
export const BELOW_SHARES = [0.9, 0.8, 0.7] as const;

/** Shares of the highest repetition for counts, because papers do not agree on one (Hébert-Losier 2009 J Sci Med Sport 12:594). */
export const COUNT_SHARES = [0.5, 0.7, 0.75, 0.9] as const;
