import { type PracticeSet, practiceFor } from './practice.ts';
import type { VisitSet } from './visit.ts';

/**
 * The sets of a visit whose reference height is that of a practice: held against it, with heights of their own that did not
 * take its place.
 *
 * @param visit - the visit of both [-]
 * @param practice - one of its practices [-]
 * @returns the sets in their order; empty where it is the reference of none, or none has a result [-]
 * Source: ours
 */
export function heldAgainst(
  visit: { readonly practice?: readonly PracticeSet[]; readonly sets: readonly VisitSet[] },
  practice: Pick<PracticeSet, 'id'>,
): readonly VisitSet[] {
  return visit.sets.filter(({ choice, begunAt, report }) => {
    const reference = report?.reference ?? null;
    if (reference === null || reference.fromRepetitions.length > 0) return false;
    return practiceFor(visit, choice, begunAt)?.id === practice.id;
  });
}
