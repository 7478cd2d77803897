import { COMPARISON_RULES } from '../comparison-rules.ts';
import { MORNING_LIMITS } from '../morning-limits.ts';
import type { Condition } from './condition.ts';
import type { GuidanceRule, RuleNumber, RuleProposal } from './rule-entry.ts';
import { guidanceRule, ruleNumber } from './rule-made.ts';

/** Pain in a session and its limits: less where the tendon is of high irritability. */
const limits = { pain: COMPARISON_RULES.painMost, painIrritable: COMPARISON_RULES.painMostIrritable } as const;
const rises = { hold: MORNING_LIMITS.holdRise, eased: MORNING_LIMITS.easedRise } as const;
const longer = ruleNumber('stiffness-longer', 0, 'min');
const share = ruleNumber('share-done-least', 0.9);
const exertion = ruleNumber('exertion-most', 8);

type Which = 'last' | 'before';

function painOver(which: Which): Condition {
  const fact = `pain-during-${which}`;
  return {
    any: [
      { fact, above: 'pain' },
      {
        all: [
          { fact: 'irritability', is: 'high' },
          { fact, above: 'painIrritable' },
        ],
      },
    ],
  };
}

/** All that was planned was done, with pain up to the limit, a morning as usual and effort left. */
function wentWell(which: Which): readonly Condition[] {
  return [
    { fact: `share-done-${which}`, atLeast: 'share' },
    { not: painOver(which) },
    { fact: `morning-rise-${which}`, atMost: 'hold' },
    { fact: `stiffness-rise-${which}`, atMost: 'longer' },
    { fact: `exertion-${which}`, atMost: 'exertion' },
  ];
}

const bothWell: readonly Condition[] = [...wentWell('last'), ...wentWell('before')];
const wellNumbers = { ...limits, hold: rises.hold, longer, share, exertion } as const;

function step(
  code: string,
  rank: number,
  when: Condition,
  numbers: Readonly<Record<string, RuleNumber>> = {},
  more: Partial<GuidanceRule> = {},
): GuidanceRule {
  const proposes: RuleProposal = { kind: 'step', code, touches: ['loading'] };
  return guidanceRule({ code: `step-${code}`, about: 'step', rank, when, numbers, proposes, ...more });
}

/** What happens to a dose from session to session, the most careful step first. The morning after governs. */
export const STEP_RULES: readonly GuidanceRule[] = [
  step(
    'ask',
    0,
    { all: [{ fact: 'missed-in-row', atLeast: 'missed' }, { not: { fact: 'missed-asked', is: 'yes' } }] },
    { missed: ruleNumber('missed-in-row', 3) },
    { standIns: ['missed-asked'], proposes: { kind: 'step', code: 'ask', touches: [] } },
  ),
  step('restart-lower', 1, { fact: 'days-since-session', above: 'gap' }, { gap: ruleNumber('gap-most', 14, 'd') }),
  step(
    'drop',
    2,
    {
      any: [
        { fact: 'hard-days', atLeast: 'days' },
        {
          all: [
            { fact: 'morning-weeks', atLeast: 'weeks' },
            { fact: 'morning-slope', above: 'flat' },
          ],
        },
      ],
    },
    { days: ruleNumber('hard-days', 2), weeks: ruleNumber('trend-weeks', 5), flat: ruleNumber('trend-flat', 0) },
  ),
  step(
    'reduce',
    3,
    {
      any: [
        painOver('last'),
        { fact: 'morning-rise-last', above: 'eased' },
        {
          all: [
            { fact: 'stiffness-rise-last', above: 'longer' },
            { fact: 'stiffness-over-double-last', atLeast: 'longer' },
          ],
        },
      ],
    },
    {
      ...limits,
      eased: rises.eased,
      longer,
      least: ruleNumber('reduce-least', 20, '%'),
      most: ruleNumber('reduce-most', 30, '%'),
    },
    {
      standIns: ['irritability'],
      proposes: { kind: 'step', code: 'reduce', touches: ['loading'], amounts: ['least', 'most'] },
    },
  ),
  step(
    'wait',
    4,
    {
      any: [
        { fact: 'last-logged', is: 'no' },
        { fact: 'morning-logged', oneOf: ['no', 'not-yet'] },
      ],
    },
    {},
    { sentence: 'step-wait' },
  ),
  step(
    'hold',
    5,
    {
      any: [
        { not: { all: bothWell } },
        { fact: 'sessions-logged', below: 'sessions' },
        { fact: 'week-trend', is: 'rising' },
      ],
    },
    { ...wellNumbers, sessions: ruleNumber('sessions-in-row', 2) },
    { standIns: ['irritability', 'week-trend'] },
  ),
  step(
    'progress',
    6,
    {
      all: [
        ...bothWell,
        { fact: 'last-logged', is: 'yes' },
        { fact: 'morning-logged', is: 'yes' },
        { fact: 'sessions-logged', atLeast: 'sessions' },
        { not: { fact: 'week-trend', is: 'rising' } },
      ],
    },
    { ...wellNumbers, sessions: ruleNumber('sessions-in-row', 2) },
    {
      standIns: ['irritability', 'week-trend'],
      proposes: { kind: 'step', code: 'progress', touches: ['loading', 'increase'] },
    },
  ),
];
