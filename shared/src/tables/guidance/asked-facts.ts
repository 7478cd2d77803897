import type { Entry } from '../../entry.ts';

/** One answer that can be tapped, and what it says of the fact. */
export interface AskedAnswer {
  readonly code: string;
  readonly value: number | string;
}

/** A fact that no test and no log tells, asked where a proposal stands on it. An answer holds in the visit that it was given in. */
export interface AskedFact extends Entry {
  readonly fact: string;
  readonly of: 'leg' | 'person';
  readonly answers: readonly AskedAnswer[];
  /** asked beside what is proposed for activity, and not beside exercises */
  readonly at?: 'activity';
}

function asked(fact: string, of: AskedFact['of'], answers: Readonly<Record<string, number | string>>): AskedFact {
  return {
    id: `asked.${fact}`,
    version: '1',
    unit: '1',
    source: 'ours: a question',
    mark: 'computed',
    fact,
    of,
    answers: Object.entries(answers).map(([code, value]) => ({ code, value })),
  };
}

/** Asked beside running, standing and the points of a return. */
function ofActivity(fact: string, of: AskedFact['of'], answers: Parameters<typeof asked>[2]): AskedFact {
  return { ...asked(fact, of, answers), at: 'activity' };
}

const yesNo = { yes: 'yes', no: 'no' } as const;

/** Facts that are asked on the card, in the order in which they are asked. Without an answer they stay as they are: not told. */
export const ASKED_FACTS: readonly AskedFact[] = [
  /** squeeze of the calf, gap, how the foot hangs: of one leg */
  asked('rupture-looked', 'leg', { clear: 'clear', suspected: 'suspected' }),
  /** whatever the reason was: somebody asked */
  asked('missed-asked', 'leg', {
    'no-time': 'yes',
    pain: 'yes',
    ill: 'yes',
    unsure: 'yes',
    'done-no-log': 'yes',
    otherwise: 'yes',
  }),
  asked('level-two-met', 'leg', yesNo),
  asked('heavy-slow-week', 'leg', {
    'week-1': 1,
    'week-2-3': 2,
    'week-4-5': 4,
    'week-6-8': 6,
    'week-9-12': 9,
    'week-after': 13,
  }),
  asked('week-step-due', 'leg', yesNo),
  asked('load-left', 'leg', yesNo),
  asked('speed-left', 'leg', yesNo),
  asked('impact-left', 'leg', yesNo),
  asked('changed-six-weeks', 'leg', yesNo),
  asked('important-change', 'leg', yesNo),
  asked('rig-at-hand', 'person', yesNo),
  asked('running-now', 'person', { running: 'running', paused: 'paused' }),
  ofActivity('runs', 'person', yesNo),
  ofActivity('hills-asked', 'person', yesNo),
  ofActivity('job-on-feet', 'person', yesNo),
  // the worst of each span is what is read
  ofActivity('pain-brisk-walk', 'leg', { 'up-to-2': 2, '3-to-5': 5, 'over-5': 10 }),
  ofActivity('pain-twenty-hops', 'leg', { 'up-to-3': 3, '4-to-5': 5, 'over-5': 10 }),
  ofActivity('rise-after-hops', 'leg', { 'no-rise': 0, rise: 1 }),
];
