import type { Entry } from '../entry.ts';

/** A limit below or above which two sides are not set into a ratio. */
export interface ComparisonRule extends Entry {
  readonly value: number;
}

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** What the two sides of a visit must satisfy before they may be set into a ratio. */
export const COMPARISON_RULES = {
  /** rest between the sides, at least; also the length of the countdown between them */
  restLeast: {
    id: 'comparison.rest-least',
    version: '1',
    unit: 's',
    source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188 (two minutes between sides)',
    mark: 'read',
    value: 120,
  },
  /** repetitions of the side that is compared with, at least: a small number makes a wild ratio */
  repetitionsLeast: { ...practice, id: 'comparison.repetitions-least', unit: '1', value: 5 },
  /** the same in standard errors of measurement of the count */
  standardErrorsLeast: { ...practice, id: 'comparison.standard-errors-least', unit: '1', value: 3 },
} as const satisfies Readonly<Record<string, ComparisonRule>>;
