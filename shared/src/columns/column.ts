import type { Entry } from '../entry.ts';

/**
 * One figure of a table, kept once for JSON and CSV: the key is the CSV heading, and in JSON its dots are levels of
 * nesting. The value is the field of the report (dots are levels again) times the factor.
 */
export interface Column extends Entry {
  readonly key: string;
  readonly field: string;
  /** from the unit of the field to the unit of the column; 1 for words and flags */
  readonly factor: number;
  /** a list holds words; in a table they stand in one cell, parted by semicolons */
  readonly kind: 'number' | 'text' | 'flag' | 'list';
  readonly description: string;
}
