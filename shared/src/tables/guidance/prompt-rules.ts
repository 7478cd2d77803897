import { IRRITABILITY_INPUTS } from '../irritability-grades.ts';
import { MORNING_LIMITS } from '../morning-limits.ts';
import type { Condition } from './condition.ts';
import { AT_HEEL_BONE } from './range-rules.ts';
import type { GuidanceRule } from './rule-entry.ts';
import { type Basis, guidanceRule, ruleNumber } from './rule-made.ts';

const guideline: Basis = { source: 'de Vos 2021 Br J Sports Med 55:1125; from memory', mark: 'from-memory' };
const lifts: Basis = { source: 'Rabusin 2021 Br J Sports Med 55:486 (12 mm; 9.6 points, 1.8 to 17.4)', mark: 'read' };

const monitored: Basis = {
  source: 'Silbernagel 2007 Am J Sports Med 35:897 (pain-monitoring model), as quoted elsewhere',
  mark: 'second-hand',
};

const { source, mark, moderateMost } = IRRITABILITY_INPUTS.morningStiffness;
const stiff = ruleNumber('stiffness-long', moderateMost, 'min', { source, mark });

function prompt(
  code: string,
  when: Condition,
  numbers: GuidanceRule['numbers'] = {},
  more: Partial<GuidanceRule> = {},
): GuidanceRule {
  const { amounts = [], touches = [] } = more.proposes ?? {};
  return guidanceRule({
    code,
    about: 'prompt',
    when,
    numbers,
    ...more,
    proposes: { kind: 'prompt', code, touches, amounts },
  });
}

/** It speaks of loading that goes on, of more of it, or of a test: not said while something keeps from loading. */
const loads = { proposes: { kind: 'prompt', code: '', touches: ['loading'] } } as const;

/** What is asked, looked at or spoken about. */
export const PROMPT_RULES: readonly GuidanceRule[] = [
  prompt(
    'flare',
    {
      any: [
        { fact: 'morning-rise-last', above: 'eased' },
        { fact: 'morning-now', is: 'flare' },
      ],
    },
    { eased: MORNING_LIMITS.easedRise },
    { standIns: ['morning-now'] },
  ),
  prompt('not-settled', { fact: 'morning-rise-last', above: 'hold' }, { hold: MORNING_LIMITS.holdRise }, monitored),
  prompt(
    'calm-long',
    {
      all: [
        { fact: 'level-now', below: 'one' },
        { fact: 'days-at-level', atLeast: 'days' },
      ],
    },
    { one: ruleNumber('level-one', 1), days: ruleNumber('calm-days', 14, 'd') },
    loads,
  ),
  prompt(
    'level-long',
    {
      all: [
        { fact: 'level-now', atLeast: 'one' },
        { fact: 'level-now', below: 'four' },
        { fact: 'days-at-level', atLeast: 'days' },
      ],
    },
    {
      one: ruleNumber('level-one', 1),
      four: ruleNumber('level-four', 4),
      days: ruleNumber('level-long-days', 28, 'd'),
    },
    loads,
  ),
  prompt('week-rising', { fact: 'week-trend', is: 'rising' }, {}, monitored),
  prompt(
    'plateau',
    {
      all: [
        { fact: 'changed-six-weeks', is: 'no' },
        { fact: 'share-six-weeks', atLeast: 'share' },
        { fact: 'days-in-programme', atLeast: 'days' },
      ],
    },
    { share: ruleNumber('plateau-share', 0.7), days: ruleNumber('plateau-days', 42, 'd') },
    loads,
  ),
  prompt(
    'twelve-weeks',
    {
      all: [
        { fact: 'important-change', is: 'no' },
        { fact: 'days-in-programme', atLeast: 'days' },
      ],
    },
    { days: ruleNumber('programme-least', 84, 'd', guideline) },
    guideline,
  ),
  prompt(
    'go-on',
    { fact: 'days-in-programme', below: 'days' },
    { days: ruleNumber('programme-least', 84, 'd', guideline) },
    { ...guideline, ...loads },
  ),
  prompt(
    'inflammatory',
    {
      all: [
        { fact: 'rest-pain', oneOf: ['occasional', 'present'] },
        { fact: 'morning-stiffness', above: 'stiff' },
        { fact: 'both-heel-bones', is: 'yes' },
      ],
    },
    { stiff },
  ),
  // the same line of the safety list asks for it by age alone
  prompt(
    'inflammatory-young',
    {
      all: [
        { fact: 'both-heel-bones', is: 'yes' },
        { fact: 'age-at-least', below: 'years' },
      ],
    },
    { years: ruleNumber('inflammatory-years', 45, 'a') },
  ),
  prompt(
    'heel-lift-middle',
    { fact: 'place', is: 'mid-portion' },
    { mm: ruleNumber('heel-lift', 12, 'mm', lifts) },
    { ...lifts, proposes: { kind: 'prompt', code: 'heel-lift', touches: [], amounts: ['mm'] } },
  ),
  prompt(
    'heel-lift-flare',
    {
      all: [
        AT_HEEL_BONE,
        {
          any: [
            { fact: 'irritability', is: 'high' },
            { fact: 'morning-now', is: 'flare' },
          ],
        },
      ],
    },
    { least: ruleNumber('heel-lift-least', 10, 'mm'), most: ruleNumber('heel-lift-most', 15, 'mm') },
    {
      standIns: ['morning-now'],
      proposes: { kind: 'prompt', code: 'heel-lift', touches: [], amounts: ['least', 'most'] },
    },
  ),
];
