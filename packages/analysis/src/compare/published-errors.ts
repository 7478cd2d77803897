import { RELIABILITY_TABLES, type ReliabilityEntry } from '@surae/shared';
import type { Reliability } from './reliability.ts';
import { CHANGE_IN_ERRORS, type ReliabilityQuestion } from './reliability-choice.ts';

function errorOf(entry: ReliabilityEntry, unit: string): Pick<Reliability, 'scale' | 'standardError'> | null {
  const { standardError, detectableChange } = entry;
  if (entry.unit === unit && standardError !== null) return { scale: 'natural', standardError };
  if (entry.unit !== '%' || detectableChange === null) return null;
  // a share of the value is an error of its logarithm; of a range the greater change, which is the cautious reading
  return { scale: 'log', standardError: detectableChange[1] / 100 / CHANGE_IN_ERRORS };
}

/**
 * Every published error of a measure, whatever the protocol that it was measured with: what a verdict could be held against if
 * another study was believed. The cautious defaults are none of them.
 *
 * @param question - measure and unit; see {@link ReliabilityQuestion} [unit of the question]
 * @returns the errors with their sources, in the order of the table; those in another unit are left out [unit of the question, - on the log scale]
 *
 * Source: sources stand with the entries; 1.96 sqrt 2 standard errors: Weir (2005), J Strength Cond Res 19:231
 */
export function publishedErrors({
  measure,
  unit,
}: Pick<ReliabilityQuestion, 'measure' | 'unit'>): readonly Reliability[] {
  return RELIABILITY_TABLES.filter((entry) => entry.measure === measure).flatMap((entry) => {
    const error = entry.mark === 'common-practice' ? null : errorOf(entry, unit);
    if (error === null) return [];
    const { id, source, group, people } = entry;
    const named = { kind: 'published', id, citation: source, group, people } as const;
    return [{ ...error, unit, source: named }];
  });
}
