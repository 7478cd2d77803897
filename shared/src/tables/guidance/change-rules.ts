import type { Condition } from './condition.ts';
import type { GuidanceRule, RuleNumber, Touch } from './rule-entry.ts';
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

/**
 * The one variable that goes up, in its order: repetitions, range, load, speed, impact. A step of a schedule or to the next level is one
 * variable too, and comes before those within a level.
 */
export const CHANGE_RULES: readonly GuidanceRule[] = [
  change('week', 0, { fact: 'week-step-due', is: 'yes' }, {}, [], { standIns: ['week-step-due'] }),
  change(
    'springs',
    1,
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
    staged,
  ),
  change(
    'sport',
    2,
    {
      all: [
        { fact: 'level-now', atLeast: 'five' },
        { fact: 'return-criteria', is: 'yes' },
      ],
    },
    { five: levels.five },
    ['impact'],
    sport,
  ),
  change('repetitions', 3, { fact: 'repetitions-left', above: 'none' }, { none }, []),
  change(
    'range',
    4,
    {
      all: [{ not: { fact: 'place', oneOf: ['insertion', 'both-places'] } }, { fact: 'range-left', above: 'noRange' }],
    },
    { noRange },
    ['step', 'below-level'],
  ),
  change(
    'load',
    5,
    {
      all: [
        { fact: 'level-now', atLeast: 'three' },
        { fact: 'load-left', is: 'yes' },
      ],
    },
    {
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
    6,
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
    7,
    {
      all: [
        { fact: 'level-now', atLeast: 'five' },
        { fact: 'impact-left', is: 'yes' },
      ],
    },
    { five: levels.five },
    ['impact'],
  ),
  guidanceRule({
    code: 'impact-after-heavy',
    about: 'block',
    when: { fact: 'days-since-heavy', below: 'days' },
    numbers: { days: ruleNumber('impact-days', 2, 'd') },
    proposes: { kind: 'block', code: 'impact', touches: [], blocks: ['impact'] },
  }),
];
