import type { Entry } from '../entry.ts';
import { SEATED_PULL, STRAIGHT_PULL } from '../protocols/isometric.ts';
import { TOLERANCE_PROBE } from '../protocols/limited.ts';
import { DOUBLE_LEG, FLOOR, INCLINE_10 } from '../protocols/to-fatigue.ts';

/** A rule that stands against a test today. */
export interface ChoiceRule extends Entry {
  /** whether a clinician may go over it with a reason that is stored */
  readonly override: 'never' | 'with-reason';
}

/** Which tests are proposed, the first one first. */
export interface ChoiceProposal extends Entry {
  readonly protocolIds: readonly string[];
}

/** A count under which something is chosen otherwise. */
export interface ChoiceLimit extends Entry {
  readonly value: number;
}

const practice = { version: '1', unit: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const ours = { version: '1', unit: '1', source: 'ours: no published order was found', mark: 'computed' } as const;

/** What stands against a test, by the code that a choice is stored with. */
export const CHOICE_RULES = {
  /** a sore insertion, and a surface on which the heel starts below the toes */
  'insertion-not-floor': { ...practice, id: 'choice.insertion-not-floor', override: 'with-reason' },
  /** a tendon of high irritability, and as many repetitions as one can */
  'high-to-fatigue': { ...practice, id: 'choice.high-to-fatigue', override: 'never' },
  /** a sore tendon that is not of low irritability, and a heel that goes below the step */
  'step-not-low': { ...practice, id: 'choice.step-not-low', override: 'with-reason' },
  /** the leg stopped at ten raises or below, when it was tried before the tests */
  'ladder-below': { ...practice, id: 'choice.ladder-below', override: 'never' },
  /** a raise that could not be done, said to be new and sudden: a rupture is asked about first */
  'sudden-loss': {
    ...practice,
    id: 'choice.sudden-loss',
    source: 'Maffulli 1998 Am J Sports Med 26:266; union of rules from memory',
    mark: 'from-memory',
    override: 'never',
  },
  /** a line of the safety list that keeps from a maximal isometric effort */
  'isometric-lock': {
    ...practice,
    id: 'choice.isometric-lock',
    source: 'guideline practice; from memory, not checked against a paper',
    mark: 'from-memory',
    override: 'never',
  },
} as const satisfies Readonly<Record<string, ChoiceRule>>;

/** Single-leg raises of the last time under which both legs together are proposed. */
export const FEW_RAISES: ChoiceLimit = { ...practice, id: 'choice.few-raises', value: 3 };

/** What is proposed behind the test of the last visit, by the irritability that counts; `none` where nothing is sore. */
export const CHOICE_PROPOSALS = {
  none: { ...ours, id: 'choice.proposal-none', protocolIds: [FLOOR.id, INCLINE_10.id, SEATED_PULL.id] },
  low: { ...ours, id: 'choice.proposal-low', protocolIds: [FLOOR.id, INCLINE_10.id, SEATED_PULL.id] },
  moderate: { ...ours, id: 'choice.proposal-moderate', protocolIds: [FLOOR.id, SEATED_PULL.id, TOLERANCE_PROBE.id] },
  high: {
    ...practice,
    id: 'choice.proposal-high',
    protocolIds: [TOLERANCE_PROBE.id, SEATED_PULL.id, STRAIGHT_PULL.id],
  },
  'few-raises': {
    ...practice,
    id: 'choice.proposal-few-raises',
    protocolIds: [DOUBLE_LEG.id, SEATED_PULL.id, TOLERANCE_PROBE.id],
  },
} as const satisfies Readonly<Record<string, ChoiceProposal>>;

export type ChoiceRuleCode = keyof typeof CHOICE_RULES;
