import type { Side } from '@surae/analysis';
import { SAFETY_LIST_VERSION } from '@surae/shared';
import type { PullSet } from './pull-set.ts';
import type { SafetyAnswer, Visit, VisitSet } from './visit.ts';

/** the line of the safety list that asks for a rupture */
const ruptureLine = 'safety.rupture';

/** Whether a pop or a sudden give ended a set or the pushes of a leg: nothing of it is a score. */
export function endedWithPop({ end }: Pick<VisitSet, 'end'> | Pick<PullSet, 'end'>): boolean {
  return end?.happened === 'pop';
}

/** The leg that a pop or a sudden give was told of in this visit; null where there was none. */
export function poppedSide({ sets, pulls = [] }: Pick<Visit, 'sets' | 'pulls'>): Side | null {
  return [...sets, ...pulls].find((one) => !one.setAside && endedWithPop(one))?.choice.side ?? null;
}

/**
 * The answer to the safety list after a pop in a test: its line is ticked, so that whatever asks the list keeps from a further
 * test today. What was answered before stays in the record.
 */
export function withRupture(safety: SafetyAnswer | null): Omit<SafetyAnswer, 'at'> {
  const { listVersion, seenWhole, ticked, overridden } = safety ?? {
    listVersion: SAFETY_LIST_VERSION,
    seenWhole: false,
    ticked: [],
    overridden: [],
  };
  return { listVersion, seenWhole, ticked: [...new Set([...ticked, ruptureLine])], overridden };
}
