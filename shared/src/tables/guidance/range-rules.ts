import { EXERCISES } from '../exercises.ts';
import { INSERTION_LOWEST, PLAN_RULES } from '../plan-rules.ts';
import type { Condition } from './condition.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { type Basis, guidanceRule, PRACTICE, ruleNumber } from './rule-made.ts';

/** Sore at the heel bone, alone or with the middle: both places go by the limits of the heel bone. */
export const AT_HEEL_BONE: Condition = { fact: 'place', oneOf: ['insertion', 'both-places'] };

const pressing: Basis = { source: PLAN_RULES['insertion-range'].source, mark: PLAN_RULES['insertion-range'].mark };
const step = EXERCISES.find(({ code }) => code === 'step-raise');

/** How far the heel goes down, and what presses the tendon against the heel bone. A place that is not known goes by the same limits. */
export const RANGE_RULES: readonly GuidanceRule[] = [
  guidanceRule({
    ...pressing,
    code: 'heel-bone-level',
    about: 'block',
    when: AT_HEEL_BONE,
    proposes: { kind: 'block', code: 'below-level', touches: [], blocks: ['below-level', 'step', 'stretch'] },
  }),
  guidanceRule({
    ...pressing,
    code: 'range-level',
    about: 'range',
    when: AT_HEEL_BONE,
    numbers: { lowest: INSERTION_LOWEST },
    proposes: { kind: 'limit', code: 'lowest-foot', touches: ['loading'], amounts: ['lowest'] },
  }),
  guidanceRule({
    code: 'range-step',
    about: 'range',
    rank: 1,
    when: {
      all: [
        { fact: 'place', is: 'mid-portion' },
        { fact: 'level-now', atLeast: 'level' },
      ],
    },
    numbers: {
      level: ruleNumber('range-step-level', 3),
      lowest: ruleNumber('range-step-lowest', step?.beginDeg ?? INSERTION_LOWEST.value, 'deg', PRACTICE),
    },
    proposes: {
      kind: 'limit',
      code: 'lowest-foot',
      touches: ['loading', 'step', 'below-level'],
      amounts: ['lowest'],
    },
  }),
];
