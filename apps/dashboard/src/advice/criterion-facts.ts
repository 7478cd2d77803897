import { factsOf } from '@surae/guidance';
import type { ReturnCriterion } from '@surae/shared';

/** Facts that a point asks for, those that say whether it is asked at all first. */
export function factsOfCriterion({ when, applies }: Pick<ReturnCriterion, 'when' | 'applies'>): readonly string[] {
  return [...new Set([...(applies === undefined ? [] : factsOf(applies)), ...factsOf(when)])];
}
