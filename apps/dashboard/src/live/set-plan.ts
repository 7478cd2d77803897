import type { PracticeRaise } from '@surae/analysis';
import type { SetChoice } from '@surae/casebook';
import type { Protocol } from '@surae/shared';

/** A set that is about to begin. */
export interface SetPlan {
  readonly choice: SetChoice;
  readonly protocol: Protocol;
  /** beats a minute; null where there are none */
  readonly beatsPerMinute: number | null;
  /** when the first beat was sounded, by the clock of the host [ms] */
  readonly beatFromMs: number;
  /** heights of practice raises that the set is held against; absent where there are none */
  readonly practice?: readonly PracticeRaise[];
}
