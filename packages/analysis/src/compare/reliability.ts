/** Where an error of measurement comes from, as it is named beside every result. */
export interface ReliabilitySource {
  readonly kind: 'own-clinic' | 'published' | 'cautious-default';
  /** id of the shared table, or of the clinic's own study */
  readonly id: string;
  readonly citation: string;
  /** whom it was measured on */
  readonly group: string;
  /** null where it was not measured */
  readonly people: number | null;
}

/** How much a measure differs from one test to the next, and who says so. */
export interface Reliability {
  /** natural: an error in `unit`; log: an error of the natural logarithm, for a spread that grows with the value */
  readonly scale: 'natural' | 'log';
  /** standard error of measurement, > 0, in `unit`; on the log scale without a dimension */
  readonly standardError: number;
  /** UCUM code of the values that it is of */
  readonly unit: string;
  readonly source: ReliabilitySource;
}
