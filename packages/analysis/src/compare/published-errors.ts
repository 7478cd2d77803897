import { RELIABILITY_TABLES, type ReliabilityEntry } from '@surae/shared';
import type { Reliability } from './reliability.ts';
import { CHANGE_IN_ERRORS, type ReliabilityQuestion } from './reliability-choice.ts';

function errorOf(entry: ReliabilityEntry, { unit, before }: ReliabilityQuestion): number | null {
  if (entry.unit === unit) return entry.standardError;
  if (entry.unit !== '%' || entry.detectableChange === null) return null;
  // of a range the greater change: the cautious reading
  return ((entry.detectableChange[1] / 100) * before) / CHANGE_IN_ERRORS;
}

/**
 * Every published error of a measure, whatever the protocol that it was measured with: what a verdict could be held against if
 * another study was believed. The cautious defaults are none of them.
 *
 * @param question - see {@link ReliabilityQuestion} [unit of the question]
 * @returns the errors with their sources, in the order of the table; those in another unit are left out [unit of the question]
 *
 * Source: sources stand with the entries; 1.96 sqrt 2 standard errors: Weir (2005), J Strength Cond Res 19:231
 */
export function publishedErrors(question: ReliabilityQuestion): readonly Reliability[] {
  return RELIABILITY_TABLES.filter(({ measure }) => measure === question.measure).flatMap((entry) => {
    const standardError = entry.mark === 'common-practice' ? null : errorOf(entry, question);
    if (standardError === null || standardError <= 0) return [];
    const { id, source, group, people } = entry;
    const named = { kind: 'published', id, citation: source, group, people } as const;
    return [{ scale: 'natural', standardError, unit: question.unit, source: named }];
  });
}
