import type { Side } from '@surae/analysis';
import type { ChoiceRuleCode } from '@surae/shared';

/** A rule that stands against a test today, and the legs because of which; empty where it is no matter of a leg. */
export interface ChoiceBlock {
  readonly rule: ChoiceRuleCode;
  readonly legs: readonly Side[];
}
