import { COMPARISON_RULES } from '../comparison-rules.ts';
import type { Condition } from './condition.ts';
import { AT_HEEL_BONE } from './range-rules.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { type Basis, guidanceRule, ruleNumber } from './rule-made.ts';

const staged: Basis = { source: 'Silbernagel 2020 J Athl Train 55:438, table 2; adapted', mark: 'read' };
const heavy: Basis = { source: 'Beyer 2015 Am J Sports Med 43:1704, as quoted elsewhere', mark: 'second-hand' };

/** A leg that is not sore has no irritability, and nothing that settles. */
const notSore: Condition = { fact: 'place', is: 'no' };

/** A sore tendon that a night does not settle. */
const unsettled: Condition = { all: [{ not: notSore }, { fact: 'settles-overnight', is: 'no' }] };

/** Rungs of the tolerance ladder below raises on two legs, and below raises on one leg. */
const BELOW_DOUBLE = ['none', 'seated-limb'] as const;
const BELOW_SINGLE = ['two-leg-floor', 'seated-loaded', 'walking'] as const;

/**
 * Raises on one leg are borne: what would lead to a lower level holds another way back too. The number is called `below`.
 */
export const ONE_LEG_BORNE: readonly Condition[] = [
  { fact: 'pain-single-raise', below: 'below' },
  { any: [notSore, { fact: 'settles-overnight', is: 'yes' }] },
  { not: { fact: 'rung-held', oneOf: [...BELOW_DOUBLE, ...BELOW_SINGLE] } },
];
export const ONE_LEG_BORNE_NUMBERS = { below: ruleNumber('learn-pain', 4) } as const;

const some = ruleNumber('raises-some', 1);
const ten = ruleNumber('raises-ten', 10);
const twenty = ruleNumber('raises-twenty', 20);

/**
 * Where a programme begins, the lowest level first. A leg that is not graded counts as moderate where that holds back, and is not let
 * into the heavy level without a grade.
 */
export const START_RULES: readonly GuidanceRule[] = [
  guidanceRule({
    code: 'start-calm',
    about: 'start-level',
    rank: 0,
    when: {
      any: [
        { fact: 'irritability', is: 'high' },
        { fact: 'valid-raises', below: 'some' },
        { fact: 'pain-double-raise', above: 'pain' },
        // more than is borne on one leg is no ground for lowering on one leg either
        { fact: 'pain-single-raise', above: 'pain' },
        { fact: 'rung-held', oneOf: BELOW_DOUBLE },
      ],
    },
    numbers: { some, pain: COMPARISON_RULES.painMost },
    standIns: ['irritability', 'rung-held'],
    proposes: { kind: 'level', code: 'calm', touches: ['loading', 'begin'] },
  }),
  guidanceRule({
    ...staged,
    code: 'start-learn',
    about: 'start-level',
    rank: 1,
    when: {
      any: [
        {
          all: [
            { fact: 'valid-raises', atLeast: 'some' },
            { fact: 'valid-raises', below: 'ten' },
          ],
        },
        // above the pain at which a single raise is gone on with, a higher level is no answer either
        { fact: 'pain-single-raise', atLeast: 'pain' },
        // whatever the count is: a night does not settle it, or raises on one leg were tried and are not borne yet
        unsettled,
        { fact: 'rung-held', oneOf: BELOW_SINGLE },
      ],
    },
    numbers: { some, ten, pain: ruleNumber('learn-pain', 4) },
    standIns: ['rung-held'],
    proposes: { kind: 'level', code: 'learn', touches: ['loading', 'begin'] },
  }),
  guidanceRule({
    ...staged,
    code: 'start-single',
    about: 'start-level',
    rank: 2,
    when: {
      all: [
        { fact: 'valid-raises', atLeast: 'ten' },
        { fact: 'valid-raises', below: 'twenty' },
        { fact: 'pain-single-raise', atMost: 'pain' },
        { any: [notSore, { fact: 'settles-overnight', is: 'yes' }] },
        // what is next after it is for no heel that is sore at the bone: that one stays on the floor
        { any: [AT_HEEL_BONE, { not: { fact: 'level-two-met', is: 'yes' } }] },
      ],
    },
    numbers: { ten, twenty, pain: COMPARISON_RULES.painMost },
    standIns: ['level-two-met'],
    proposes: { kind: 'level', code: 'single', touches: ['loading', 'begin'] },
  }),
  guidanceRule({
    ...staged,
    code: 'start-range',
    about: 'start-level',
    rank: 3,
    when: {
      all: [
        { fact: 'valid-raises', atLeast: 'ten' },
        { fact: 'valid-raises', below: 'twenty' },
        { fact: 'pain-single-raise', atMost: 'pain' },
        { any: [notSore, { fact: 'settles-overnight', is: 'yes' }] },
        { fact: 'level-two-met', is: 'yes' },
        { not: AT_HEEL_BONE },
      ],
    },
    numbers: { ten, twenty, pain: COMPARISON_RULES.painMost },
    standIns: ['level-two-met'],
    proposes: { kind: 'level', code: 'range', touches: ['loading', 'begin', 'step', 'below-level'] },
  }),
  guidanceRule({
    ...heavy,
    code: 'start-heavy',
    about: 'start-level',
    rank: 4,
    when: {
      all: [
        { fact: 'valid-raises', atLeast: 'twenty' },
        { any: [notSore, { fact: 'irritability', oneOf: ['low', 'moderate'] }] },
      ],
    },
    numbers: { twenty },
    proposes: { kind: 'level', code: 'heavy', touches: ['loading', 'begin'] },
  }),
  guidanceRule({
    code: 'begun',
    about: 'block',
    when: { fact: 'programme-begun', is: 'yes' },
    standIns: ['programme-begun'],
    proposes: { kind: 'block', code: 'begin', touches: [], blocks: ['begin'], onlyWhereItHolds: true },
  }),
];
