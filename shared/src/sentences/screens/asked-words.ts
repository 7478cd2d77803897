import { sentences } from '../sentence.ts';

/** What is asked on the card of a proposal, by the fact that it settles. */
export const ASKED_WORDS = sentences('asked', {
  'rupture-looked': 'Signs of a rupture on this leg: calf squeeze, gap, how the foot hangs',
  'missed-asked': 'Why have sessions no log?',
  'level-two-met': 'Three sets of fifteen on one leg on the floor, all done?',
  'heavy-slow-week': 'Which weeks of heavy slow training are done now?',
  'week-step-due': 'Are all sessions of these weeks done?',
  'load-left': 'Is a heavier weight at hand?',
  'speed-left': 'Are faster raises asked for?',
  'impact-left': 'Are more bounces or hops asked for?',
  'changed-six-weeks': 'A change beyond the usual wobble in six weeks, as the result page tells it?',
  'important-change': 'A change that matters to the patient?',
  'rig-at-hand': 'Is a rig for hard holds at hand?',
  'running-now': 'Is running done now?',
});

/** Answers that are tapped. */
export const ASKED_CHOICES = sentences('asked-answer', {
  clear: 'none found',
  suspected: 'signs found',
  yes: 'yes',
  no: 'no',
  'no-time': 'no time or place',
  pain: 'pain',
  ill: 'ill, or away',
  unsure: 'not sure how',
  'done-no-log': 'done, and not logged',
  otherwise: 'another reason',
  'week-1': 'week 1',
  'week-2-3': 'weeks 2 and 3',
  'week-4-5': 'weeks 4 and 5',
  'week-6-8': 'weeks 6 to 8',
  'week-9-12': 'weeks 9 to 12',
  'week-after': 'after week 12',
  running: 'runs now',
  paused: 'paused',
  open: 'not told',
  title: 'What would settle it',
  'title-leg': '{leg}: what would settle it',
});
