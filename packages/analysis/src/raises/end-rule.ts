import { CRITERIA, type CriterionId, FAULT_KINDS, type FaultKind } from '@surae/shared';
import { requireRange } from '../check.ts';

/**
 * Kind of fault that a failed criterion is, for the end rule.
 *
 * @param criterion - which criterion [-]
 * @returns the kind; undefined when failing it never ends a test [-]
 *
 * Source: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188 (height, tempo, knee and trunk, support each apart)
 */
export function faultKind(criterion: CriterionId): FaultKind | undefined {
  return CRITERIA[criterion].faultKind ?? undefined;
}

/** How one repetition counts for the end rule. */
export interface EndRuleRepetition {
  readonly faults: ReadonlySet<FaultKind>;
  /** false when a data gap hides the repetition: it neither adds to a row nor breaks it */
  readonly judged: boolean;
}

/** Where a row of faults ended the test. */
export interface FaultEnd {
  readonly kind: FaultKind;
  /** index of the repetition that completed the row, from 0 */
  readonly index: number;
}

/**
 * Repetition at which the test ends because faults of one kind followed each other without a good repetition between. A
 * trace shows no prompts: each faulty repetition is taken as prompted.
 *
 * @param repetitions - the attempted repetitions in order [-]
 * @param faultsInARow - how many in a row end the test, >= 1 [-]
 * @returns kind and index of the repetition that completed the first such row; undefined when there is none [-]
 * @throws {@link InputError} `out-of-range` when fewer than one in a row is asked for
 *
 * Source: Sleeswijk Visser (2025), Braz J Phys Ther 29:101188 (no response to two consecutive prompts)
 */
export function faultEnd(repetitions: readonly EndRuleRepetition[], faultsInARow: number): FaultEnd | undefined {
  requireRange(faultsInARow, faultsInARow >= 1, 'faultsInARow', '>= 1');
  const rows = new Map<FaultKind, number>();
  for (let index = 0; index < repetitions.length; index++) {
    const { faults, judged } = repetitions[index];
    if (!judged) continue;
    for (const kind of FAULT_KINDS) {
      const row = faults.has(kind) ? (rows.get(kind) ?? 0) + 1 : 0;
      if (row >= faultsInARow) return { kind, index };
      rows.set(kind, row);
    }
  }
  return undefined;
}
