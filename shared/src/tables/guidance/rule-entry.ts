import type { Entry } from '../../entry.ts';
import type { Condition } from './condition.ts';
import type { GuidanceVariable } from './variables.ts';

/** A number of a rule, with its own source. */
export interface RuleNumber extends Entry {
  readonly value: number;
}

/** What something that is proposed does, as far as rules can stand against it. */
export type Touch =
  /** any load on the tendon: every exercise, every run */
  | 'loading'
  /** a hard effort without movement */
  | 'hard-hold'
  /** the edge of a step */
  | 'step'
  /** a stretch of the calf */
  | 'stretch'
  /** a heel lower than the toes */
  | 'below-level'
  /** bounces, hops, runs */
  | 'impact'
  /** more than what is done so far */
  | 'increase'
  /** the beginning of a programme */
  | 'begin';

/** What a rule proposes to a clinician, who decides. */
export interface RuleProposal {
  /**
   * `level`, `programme`, `load` and `rung` name an entry of the table of that name; `step` what happens to a dose; `change` the one variable that goes up
   * with its amounts; `limit` a limit; `prompt` something to ask or look at; `block` stands against what touches something
   */
  readonly kind: 'level' | 'programme' | 'load' | 'rung' | 'step' | 'change' | 'limit' | 'prompt' | 'block';
  readonly code: string;
  readonly touches: readonly Touch[];
  /** of a block alone: what it stands against, as long as it is not ruled out */
  readonly blocks?: readonly Touch[];
  /** of a block alone: what cannot be told is no block, since another rule asks the same before */
  readonly onlyWhereItHolds?: true;
  /** names of the numbers of the rule that are the amount; of several each is one way */
  readonly amounts?: readonly string[];
}

/** Who changed a number of a rule for a clinic, when, and what stood there before. */
export interface RuleEdit {
  readonly number: string;
  readonly by: string;
  readonly day: string;
  readonly was: number;
  /** why, in words of the clinic; absent where it was not told */
  readonly reason?: string;
}

/** A rule of guidance: where a condition on facts holds, it proposes something. */
export interface GuidanceRule extends Entry {
  readonly code: string;
  readonly about: GuidanceVariable;
  /** among rules about the same variable, of which one is taken: the lowest that holds */
  readonly rank: number;
  readonly of: 'leg' | 'person';
  /** it is looked at only where this is proposed for the leg itself and for every leg that governs, and stands */
  readonly follows?: { readonly about: GuidanceVariable; readonly code: string };
  readonly when: Condition;
  readonly numbers: Readonly<Record<string, RuleNumber>>;
  /** facts that are taken to be their stand-in where they are missing */
  readonly standIns?: readonly string[];
  readonly proposes: RuleProposal;
  /** code of the sentence that says what is proposed, and of the one that says what would change it */
  readonly sentence: string;
  readonly changedBy: string;
  /** empty, or absent, in the rules as they are given */
  readonly edits?: readonly RuleEdit[];
}
