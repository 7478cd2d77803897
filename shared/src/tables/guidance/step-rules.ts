import { COMPARISON_RULES } from '../comparison-rules.ts';
import { MORNING_LIMITS, STIFFNESS_LIMITS } from '../morning-limits.ts';
import type { Condition } from './condition.ts';
import type { GuidanceRule, RuleNumber, RuleProposal } from './rule-entry.ts';
import { guidanceRule, ruleNumber } from './rule-made.ts';
import { TREND_NUMBERS } from './trend-numbers.ts';

/** Pain in a session, and in the hours after it, and its limits: less where the tendon is of high irritability. */
const limits = { pain: COMPARISON_RULES.painMost, painIrritable: COMPARISON_RULES.painMostIrritable } as const;
const rises = { hold: MORNING_LIMITS.holdRise, eased: MORNING_LIMITS.easedRise } as const;
const longer = ruleNumber('stiffness-longer', 0, 'min');
const planned = ruleNumber('planned-least', 4);
const leftOut = ruleNumber('left-out-most', 0.3);
const share = ruleNumber('share-done-least', 0.9);
const exertion = ruleNumber('exertion-most', 8);
const one = ruleNumber('level-one', 1);
const doubled: RuleNumber = STIFFNESS_LIMITS.doubledOver;

type Which = 'last' | 'before';

/** In the session or after it: the same limit holds for both, and what was not told of one of them may have been over it. */
function painOver(which: Which): Condition {
  const over = (above: 'pain' | 'painIrritable'): Condition => ({
    any: [`pain-during-${which}`, `pain-after-${which}`].map((fact) => ({ fact, above })),
  });
  return { any: [over('pain'), { all: [{ fact: 'irritability', is: 'high' }, over('painIrritable')] }] };
}

/** All that was planned was done, with pain up to the limit in it and after it, a morning as usual and effort left. */
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
/** So much of the plan is left out that what is done of it tells little. */
const fewDone: Condition = {
  all: [
    { fact: 'planned-two-weeks', atLeast: 'planned' },
    { fact: 'left-out-two-weeks', above: 'leftOut' },
  ],
};
const upNumbers = {
  ...limits,
  hold: rises.hold,
  longer,
  share,
  exertion,
  planned,
  leftOut,
  // a usual level that crept up is no ground for more
  morningMost: ruleNumber('morning-most', 3),
  sessions: ruleNumber('sessions-in-row', 2),
} as const;

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

/** A dose that was made less is done first, before it is made less again. */
const lastAtDose: Condition = { fact: 'last-at-dose', is: 'yes' };

/**
 * Nothing was made less since the newest session. A flare on a dose that was raised and not done yet is no ground to do it: it is
 * made less like any other.
 */
const notMadeLess: Condition = {
  any: [
    lastAtDose,
    {
      all: [
        { fact: 'morning-now', is: 'flare' },
        { fact: 'dose-eased', is: 'no' },
      ],
    },
  ],
};

/** Too much on two days of a week, or mornings that rise over weeks, all of it at the level of now. */
const tooMuch: Condition = {
  any: [
    { fact: 'hard-days', atLeast: 'days' },
    {
      all: [
        { fact: 'morning-weeks', atLeast: 'weeks' },
        { fact: 'morning-slope', atLeast: 'rise' },
        // a slope that chance may have made is no rise
        { fact: 'morning-slope-least', above: 'flat' },
      ],
    },
  ],
};
const tooMuchNumbers = {
  days: ruleNumber('hard-days', 2),
  weeks: ruleNumber('trend-weeks', 5),
  rise: TREND_NUMBERS.rise,
  flat: TREND_NUMBERS.flat,
  one,
} as const;
const reduceNumbers = {
  ...limits,
  eased: rises.eased,
  easedAbove: MORNING_LIMITS.easedAbove,
  doubled,
  longer,
  least: ruleNumber('reduce-least', 20, '%'),
  most: ruleNumber('reduce-most', 30, '%'),
} as const;

/** What happens to a dose from session to session, the most careful step first. The morning after governs. */
export const STEP_RULES: readonly GuidanceRule[] = [
  step(
    'ask',
    0,
    {
      all: [
        { any: [{ fact: 'missed-in-row', atLeast: 'missed' }, fewDone] },
        { not: { fact: 'missed-asked', is: 'yes' } },
      ],
    },
    { missed: ruleNumber('missed-in-row', 3), planned, leftOut },
    { standIns: ['missed-asked'], proposes: { kind: 'step', code: 'ask', touches: [] } },
  ),
  // a gap leads down once, and below the lightest level there is none
  step(
    'restart-lower',
    1,
    {
      all: [
        { fact: 'days-since-session', above: 'gap' },
        { fact: 'level-now', atLeast: 'one' },
        { not: { fact: 'lowered-since', is: 'yes' } },
      ],
    },
    { gap: ruleNumber('gap-most', 14, 'd'), one },
    { standIns: ['lowered-since'] },
  ),
  step('drop', 2, { all: [tooMuch, { fact: 'level-now', atLeast: 'one' }] }, tooMuchNumbers),
  step(
    'lightest',
    3,
    { all: [tooMuch, { fact: 'level-now', below: 'one' }, lastAtDose] },
    { ...tooMuchNumbers, least: reduceNumbers.least, most: reduceNumbers.most },
    {
      standIns: ['last-at-dose'],
      proposes: { kind: 'step', code: 'lightest', touches: ['loading'], amounts: ['least', 'most'] },
    },
  ),
  step(
    'reduce',
    4,
    {
      all: [
        notMadeLess,
        {
          any: [
            painOver('last'),
            { fact: 'morning-rise-last', above: 'eased' },
            { fact: 'morning-pain-last', above: 'easedAbove' },
            { fact: 'morning-now', is: 'flare' },
            {
              all: [
                { fact: 'stiffness-rise-last', above: 'doubled' },
                { fact: 'stiffness-over-double-last', atLeast: 'longer' },
              ],
            },
          ],
        },
      ],
    },
    reduceNumbers,
    {
      standIns: ['irritability', 'last-at-dose', 'morning-now', 'dose-eased'],
      proposes: { kind: 'step', code: 'reduce', touches: ['loading'], amounts: ['least', 'most'] },
    },
  ),
  step('wait', 5, {
    any: [
      { fact: 'last-logged', is: 'no' },
      { fact: 'morning-logged', oneOf: ['no', 'not-yet'] },
      { fact: 'told-in-full', is: 'no' },
    ],
  }),
  step(
    'hold',
    6,
    {
      any: [
        { not: { all: bothWell } },
        { fact: 'sessions-logged', below: 'sessions' },
        { fact: 'week-trend', is: 'rising' },
        { fact: 'morning-now', is: 'flare' },
        { fact: 'morning-pain-last', above: 'morningMost' },
        fewDone,
      ],
    },
    upNumbers,
    { standIns: ['irritability', 'week-trend', 'morning-now'] },
  ),
  step(
    'progress',
    7,
    {
      all: [
        ...bothWell,
        { fact: 'last-logged', is: 'yes' },
        { fact: 'morning-logged', is: 'yes' },
        { fact: 'sessions-logged', atLeast: 'sessions' },
        { not: { fact: 'week-trend', is: 'rising' } },
        { not: { fact: 'morning-now', is: 'flare' } },
        { fact: 'morning-pain-last', atMost: 'morningMost' },
        { not: fewDone },
      ],
    },
    upNumbers,
    {
      standIns: ['irritability', 'week-trend', 'morning-now'],
      proposes: { kind: 'step', code: 'progress', touches: ['loading', 'increase'] },
    },
  ),
];
