import type { EvidenceMark, GuidanceRule, GuidanceVariable } from '@surae/shared';
import type { Leg } from './given-facts.ts';
import type { RuleTrace } from './judge-rule.ts';

/** Whether a proposal can be taken as it is, or something that is not known could still lead to a more careful one. */
export type Standing = 'stands' | 'waits';

/** Something that is proposed for a leg, or for the person. It is a proposal: the clinician decides. */
export interface Proposed {
  readonly about: GuidanceVariable;
  /** null for the person */
  readonly leg: Leg | null;
  readonly rule: GuidanceRule;
  readonly standing: Standing;
  /** the answers it rests on, and what was treated as something because it is missing */
  readonly trace: RuleTrace;
  /** rules of a lower rank that are not ruled out, each with what would settle it */
  readonly notRuledOut: readonly RuleTrace[];
  /** the least supported of the rule and its numbers */
  readonly mark: EvidenceMark;
}

/** What is proposed for both legs together: the most careful one of the legs that govern. */
export interface Together {
  readonly about: GuidanceVariable;
  readonly rule: GuidanceRule;
  /** legs that lead to it */
  readonly legs: readonly Leg[];
  readonly standing: Standing;
}

/** A rule that holds and is not proposed, with everything that stands against it. */
export interface Blocked {
  readonly trace: RuleTrace;
  readonly by: readonly RuleTrace[];
}

/** What follows from facts and rules. */
export interface Guidance {
  /** what stands against something: blocks that hold, and those that cannot be ruled out */
  readonly blocks: readonly RuleTrace[];
  /** nothing that loads is proposed */
  readonly locked: boolean;
  readonly proposals: readonly Proposed[];
  readonly together: readonly Together[];
  readonly blocked: readonly Blocked[];
  /** rules that could not be told, with what is missing or lies between */
  readonly lacking: readonly RuleTrace[];
  /** rules of which a number was changed for a clinic */
  readonly edited: readonly GuidanceRule[];
}
