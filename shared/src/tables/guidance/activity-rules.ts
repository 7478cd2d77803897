import type { IrritabilityGrade } from '../irritability-grades.ts';
import type { Condition } from './condition.ts';
import type { GuidanceRule, RuleNumber, Touch } from './rule-entry.ts';
import { type Basis, guidanceRule, ruleNumber } from './rule-made.ts';

const ranks = { high: 0, moderate: 1, low: 2 } as const satisfies Record<IrritabilityGrade, number>;

/** Who has paused goes by what a first run asks for, and not by what is kept of running. */
const notPaused: Condition = { not: { fact: 'running-now', is: 'paused' } };

/** One cell: what a grade says of one activity. A leg that is not graded is treated as moderate, and the rule says so. */
function cell(
  about: 'running' | 'standing',
  asked: 'runs' | 'job-on-feet',
  grade: IrritabilityGrade,
  touches: readonly Touch[],
  numbers: Readonly<Record<string, RuleNumber>> = {},
): GuidanceRule {
  const code = `${about}-${grade}`;
  const isKept = about === 'running' && grade !== 'high';
  return guidanceRule({
    code,
    about,
    rank: ranks[grade],
    when: {
      all: [{ fact: asked, is: 'yes' }, { fact: 'irritability', is: grade }, ...(isKept ? [notPaused] : [])],
    },
    numbers,
    standIns: [asked, 'irritability', ...(isKept ? ['running-now'] : [])],
    proposes: { kind: 'limit', code, touches, amounts: Object.keys(numbers) },
  });
}

/** It says how runs are done over weeks, and proposes none for today: what stands against a bounce today is asked of the run itself. */
const run = ['loading'] as const;
const lift = {
  liftLeast: ruleNumber('standing-lift-least', 10, 'mm'),
  liftMost: ruleNumber('standing-lift-most', 15, 'mm'),
};

/** What is proposed for running and for work on the feet, by irritability. */
export const ACTIVITY_RULES: readonly GuidanceRule[] = [
  cell('running', 'runs', 'high', [], {
    pauseLeast: ruleNumber('running-pause-least', 7, 'd'),
    pauseMost: ruleNumber('running-pause-most', 14, 'd'),
  }),
  // the pause itself loads nothing and is said under a lock too; what takes the place of runs is a load like any other
  guidanceRule({
    code: 'running-instead',
    about: 'running-instead',
    when: {
      all: [
        { fact: 'runs', is: 'yes' },
        { fact: 'irritability', is: 'high' },
      ],
    },
    standIns: ['runs', 'irritability'],
    proposes: { kind: 'limit', code: 'running-instead', touches: ['loading'] },
  }),
  cell('running', 'runs', 'moderate', run, {
    lessLeast: ruleNumber('running-less-least', 30, '%'),
    lessMost: ruleNumber('running-less-most', 50, '%'),
    between: ruleNumber('running-days-between', 1, 'd'),
  }),
  cell('running', 'runs', 'low', run, {
    flatLeast: ruleNumber('running-flat-least', 14, 'd'),
    flatMost: ruleNumber('running-flat-most', 28, 'd'),
  }),
  cell('standing', 'job-on-feet', 'high', [], {
    breakEvery: ruleNumber('standing-break', 60, 'min'),
    boutLess: ruleNumber('standing-bout-less', 33, '%'),
    ...lift,
  }),
  cell('standing', 'job-on-feet', 'moderate', [], lift),
  cell('standing', 'job-on-feet', 'low', []),
];

const between: Basis = {
  source: 'Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876, table of recovery days; from memory',
  mark: 'from-memory',
};

/** The next run or jump waits until enough days of recovery are over; after a light one it need not wait. */
function recovery(grade: 'medium' | 'high', days: number): GuidanceRule {
  return guidanceRule({
    ...between,
    code: `recovery-${grade}`,
    about: 'recovery',
    rank: grade === 'high' ? 0 : 1,
    when: {
      all: [
        { fact: 'last-load', is: grade },
        { fact: 'recovery-days', below: 'days' },
      ],
    },
    numbers: { days: ruleNumber(`recovery-days-${grade}`, days, 'd', between) },
    standIns: ['last-load'],
    proposes: { kind: 'limit', code: 'recovery', touches: [], amounts: ['days'] },
  });
}

const askHills: Condition = {
  all: [
    { fact: 'runs', is: 'yes' },
    { fact: 'hills-asked', is: 'no' },
  ],
};

/** Days between loads on the tendon, and hills, which nothing here models. */
export const RECOVERY_RULES: readonly GuidanceRule[] = [
  recovery('high', 3),
  recovery('medium', 2),
  // the same two days that keep a bounce from following heavy raises keep heavy raises from following a run
  guidanceRule({
    code: 'recovery-after-run',
    about: 'recovery',
    rank: 2,
    when: { fact: 'days-since-run', below: 'days' },
    numbers: { days: ruleNumber('recovery-days-after-run', 2, 'd') },
    proposes: { kind: 'limit', code: 'recovery', touches: [], amounts: ['days'] },
  }),
  guidanceRule({
    code: 'recovery-after-bounces',
    about: 'recovery',
    rank: 3,
    when: { fact: 'days-since-bounces', below: 'days' },
    numbers: { days: ruleNumber('recovery-days-after-run', 2, 'd') },
    proposes: { kind: 'limit', code: 'recovery', touches: [], amounts: ['days'] },
  }),
  guidanceRule({
    code: 'ask-hills',
    about: 'prompt',
    of: 'person',
    when: askHills,
    standIns: ['runs', 'hills-asked'],
    proposes: { kind: 'prompt', code: 'ask-hills', touches: [] },
  }),
];
