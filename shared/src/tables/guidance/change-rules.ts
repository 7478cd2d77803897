import type { Condition } from './condition.ts';
import { LEVEL_CHANGES } from './level-changes.ts';
import { AT_HEEL_BONE } from './range-rules.ts';
import type { GuidanceRule, RuleNumber, RuleProposal, Touch } from './rule-entry.ts';
import { type Basis, guidanceRule, ruleNumber } from './rule-made.ts';

const staged: Basis = {
  source: 'Silbernagel 2020 J Athl Train 55:438, table 2; limits: common practice',
  mark: 'read',
};
const sport: Basis = {
  source: 'Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876; from memory',
  mark: 'from-memory',
};
const none = ruleNumber('left-none', 0);
const noRange = ruleNumber('range-left-none', 0, 'deg');
const levels = {
  one: ruleNumber('level-one', 1),
  three: ruleNumber('level-three', 3),
  four: ruleNumber('level-four', 4),
  five: ruleNumber('level-five', 5),
} as const;

function change(
  code: string,
  rank: number,
  when: Condition,
  numbers: Readonly<Record<string, RuleNumber>>,
  touches: readonly Touch[],
  more: Partial<GuidanceRule> = {},
): GuidanceRule {
  return guidanceRule({
    code: `change-${code}`,
    about: 'change',
    rank,
    follows: { about: 'step', code: 'progress' },
    when,
    numbers,
    proposes: { kind: 'change', code, touches: ['loading', 'increase', ...touches] },
    ...more,
  });
}

const noImpact: RuleProposal = { kind: 'block', code: 'impact', touches: [], blocks: ['impact'] };

/** An impact keeps away from heavy raises, and from another impact; how long after a run the next one is stands among recovery. */
function apart(from: 'heavy' | 'bounces', fact: string): GuidanceRule {
  return guidanceRule({
    code: `impact-after-${from}`,
    about: 'block',
    when: { fact, below: 'days' },
    numbers: { days: ruleNumber('impact-days', 2, 'd') },
    proposes: noImpact,
  });
}

/**
 * The one variable that goes up, in its order: repetitions, range, load, speed, impact. A step of a schedule or to the next level is one
 * variable too, and comes before those within a level.
 */
export const CHANGE_RULES: readonly GuidanceRule[] = [
  // what was made less comes back before anything new
  change('back', 0, { fact: 'dose-eased', is: 'yes' }, {}, [], { standIns: ['dose-eased'] }),
  change('week', 1, { fact: 'week-step-due', is: 'yes' }, {}, [], { standIns: ['week-step-due'] }),
  ...LEVEL_CHANGES,
  change(
    'springs',
    7,
    {
      all: [
        { fact: 'level-now', atLeast: 'four' },
        { fact: 'level-now', below: 'five' },
        { fact: 'days-at-level', atLeast: 'days' },
        { fact: 'worst-pain-lately', atMost: 'pain' },
        { fact: 'days-since-flare', atLeast: 'calm' },
      ],
    },
    {
      four: levels.four,
      five: levels.five,
      days: ruleNumber('springs-days', 28, 'd'),
      pain: ruleNumber('springs-pain', 2),
      calm: ruleNumber('springs-calm', 14, 'd'),
    },
    ['impact'],
    { ...staged, proposes: { kind: 'level', code: 'springs', touches: ['loading', 'increase', 'impact'] } },
  ),
  change(
    'sport',
    8,
    {
      all: [
        { fact: 'level-now', atLeast: 'five' },
        { fact: 'level-now', below: 'six' },
        { fact: 'days-at-level', atLeast: 'days' },
        { fact: 'return-criteria', is: 'yes' },
      ],
    },
    { five: levels.five, six: ruleNumber('level-six', 6), days: ruleNumber('sport-days', 14, 'd') },
    ['impact'],
    { ...sport, proposes: { kind: 'level', code: 'sport', touches: ['loading', 'increase', 'impact'] } },
  ),
  change('repetitions', 9, { fact: 'repetitions-left', above: 'none' }, { none }, []),
  change(
    'range',
    10,
    {
      all: [{ not: AT_HEEL_BONE }, { fact: 'level-now', atLeast: 'three' }, { fact: 'range-left', above: 'noRange' }],
    },
    { noRange, three: levels.three },
    ['step', 'below-level'],
  ),
  change(
    'load',
    11,
    {
      all: [
        {
          any: [
            { fact: 'level-now', atLeast: 'three' },
            // four weeks at a lower level: what is seated is loaded before nothing goes up for weeks
            {
              all: [
                { fact: 'level-now', atLeast: 'one' },
                { fact: 'days-at-level', atLeast: 'days' },
              ],
            },
          ],
        },
        { fact: 'load-left', is: 'yes' },
      ],
    },
    {
      one: levels.one,
      days: ruleNumber('load-days', 28, 'd'),
      three: levels.three,
      kgLeast: ruleNumber('load-kg-least', 2, 'kg'),
      kgMost: ruleNumber('load-kg-most', 5, 'kg'),
      percent: ruleNumber('load-percent', 5, '%'),
    },
    [],
    {
      proposes: {
        kind: 'change',
        code: 'load',
        touches: ['loading', 'increase'],
        amounts: ['kgLeast', 'kgMost', 'percent'],
      },
    },
  ),
  change(
    'speed',
    12,
    {
      all: [
        { fact: 'level-now', atLeast: 'four' },
        { fact: 'speed-left', is: 'yes' },
      ],
    },
    { four: levels.four },
    [],
  ),
  change(
    'impact',
    13,
    {
      all: [
        { fact: 'level-now', atLeast: 'five' },
        { fact: 'impact-left', is: 'yes' },
      ],
    },
    { five: levels.five },
    ['impact'],
  ),
  apart('heavy', 'days-since-heavy'),
  apart('bounces', 'days-since-bounces'),
];
