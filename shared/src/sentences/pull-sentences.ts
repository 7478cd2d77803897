import { sentences } from './sentence.ts';

/** Why an isometric effort does not count, in the order in which reasons are shown. */
export const ACCEPT_SENTENCES = sentences('accept', {
  'warm-up': 'A warm-up push, no trial.',
  'restless-baseline': 'The force wandered before the effort: keep still for two seconds first.',
  'tare-error': 'The load at rest was another one after the effort: the zero or the leg moved.',
  countermovement: 'The force dipped before it rose: push straight away, without letting go first.',
  'pre-tension': 'Tension crept in before the effort: relax, then push.',
  'gap-near-peak': 'Samples are missing near the greatest force.',
  clipped: 'The sensor was at the end of its range: the true force is higher.',
  'short-plateau': 'The force was not held near its greatest for long enough.',
  lifted: 'Heel or hip lifted.',
  'not-fast': 'The force was ramped up: push as fast as possible.',
});

/** What an isometric effort is judged on, for lists. */
export const ACCEPT_NAMES = sentences('accept-name', {
  'warm-up': 'a trial, no warm-up',
  'restless-baseline': 'still before',
  'tare-error': 'load at rest unchanged',
  countermovement: 'no dip before',
  'pre-tension': 'no tension before',
  'gap-near-peak': 'no gap near the peak',
  clipped: 'within the range of the sensor',
  'short-plateau': 'held long enough',
  lifted: 'heel and hip stay',
  'not-fast': 'as fast as possible',
});

/** How warm-up pushes were told from trials. */
export const WARM_UP_SENTENCES = sentences('warm-up', {
  told: 'As told: the first pushes were warm-ups, and the others are trials.',
  guessed:
    'Nobody said how many pushes were warm-ups: those before the first full one that are far below the best are taken for some.',
  open: 'After a full push came one far below the best: nobody can tell whether it was a trial.',
});

/** What looked like an effort and is none. */
export const NO_EFFORT_SENTENCES = sentences('no-effort', {
  knock: 'Too short to be an effort: a knock.',
  'cut-off': 'The recording begins or ends inside this effort.',
  'too-small': 'Far smaller than the greatest effort of the recording.',
  'not-measurable': 'Its beginning, its end or a stretch at rest beside it is missing.',
});

/** Why a rate of rise is not given. */
export const NO_RATE_SENTENCES = sentences('no-rate', {
  ramped: 'The force was ramped up: its rate is that of the instruction.',
  'rate-too-low': 'There are too few samples a second for this window.',
  'gap-in-rise': 'Samples are missing in the rise.',
  'pre-tension': 'Tension crept in before the effort.',
  countermovement: 'The force dipped before it rose.',
  clipped: 'The sensor was at the end of its range.',
  'onset-uncertain': 'The beginning of the effort is too uncertain.',
  'rate-uncertain': 'The rate is known too poorly: the force starts too softly for this sensor.',
});

/** Whether a fast effort starts distinctly, for lists. */
export const START_NAMES = sentences('start', {
  yes: 'distinct',
  no: 'not distinct',
  cannot_tell: 'cannot tell',
});

/** Why another effort is asked for. */
export const ANOTHER_SENTENCES = sentences('another', {
  'too-few': 'Fewer efforts count than the protocol asks for.',
  'still-improving': 'The last effort is the best by more than the protocol allows: still improving.',
  inconsistent: 'The best two efforts differ by more than 10 %.',
});

/** How close the best two efforts lie. */
export const CONSISTENCY_SENTENCES = sentences('consistency', {
  good: 'The best two efforts agree well.',
  fair: 'The best two efforts agree fairly.',
  poor: 'The best two efforts lie far apart.',
});

/** What the score of an isometric test is. */
export const PULL_SCORE_SENTENCES = sentences('pull-score', {
  'best-mean': 'greatest mean over half a second, above the load at rest',
  'best-peak': 'greatest force, above the load at rest',
  'mean-of-best-rates': 'mean of the best rates of rise over the first 100 ms',
});

/** Whether the trials of a hold show a maximum, and why not. */
export const PULL_EFFORT_SENTENCES = sentences('pull-effort', {
  'trials-differ': 'The best two efforts differ: another one would tell.',
  'last-trial-still-rising': 'The last effort is the best by far: a further one may be better still.',
  'plateau-short': 'The best effort was held for a short time only.',
  'too-few-trials': 'Fewer than two efforts count.',
  'plateau-not-known': 'How long the best effort was held is not known.',
  'trial-not-measured': 'An effort went beyond the range of the sensor: it may have been the best.',
});

/** Whether the trials of a hold show a maximum. */
export const PULL_QUALITY_SENTENCES = sentences('pull-quality', {
  yes: 'The efforts agree and were held: they show a maximum.',
  no: 'The efforts do not show a maximum yet.',
  cannot_tell: 'Too little is known to say whether the efforts show a maximum.',
});

/** What kind of result the end makes an isometric test. */
export const PULL_END_CLASS_SENTENCES = sentences('pull-end-class', {
  capacity: 'The force shows what the calf could do.',
  tolerance: 'The force shows what was tolerated before the pain limit, not what the calf could do.',
  incomplete: 'The test is incomplete; its force is not interpreted.',
  censored: 'The force is a lower bound.',
  probe: 'A fixed test: the answer lies in how it was tolerated, not in the force.',
  unknown: 'Why the test ended was not recorded; the force is not interpreted.',
});

/** Why the interpretation of an isometric test is held back. */
export const PULL_GATE_SENTENCES = sentences('pull-gate', {
  'doubtful-signal': 'The signal is doubtful over some of the efforts.',
  'side-unknown': 'The side is not given.',
  'no-effort': 'No effort was found.',
  'no-accepted-effort': 'No effort counts.',
  'too-few-accepted': 'Fewer efforts count than the protocol asks for.',
});

/** Why figures of an isometric test are not shown, or what their uncertainties leave out. */
export const PULL_WITHHELD_SENTENCES = sentences('pull-withheld', {
  'no-mass-for-strength': 'Figures per kilogram and in body weights are not shown: enter the body mass.',
  'no-forefoot-lever': 'Torque is not shown: measure from the ankle axis to the line of the force, across it.',
  'torque-only': 'Force and body weights are not shown: a torque is never turned into a force.',
  'no-calibration':
    'The uncertainties leave out that of the calibration of the sensor: it is not known, and it is not zero.',
  'no-zero-error':
    'The uncertainties of gross forces and of the load at rest leave out that of the zero of the sensor: it is not known.',
  'no-rate': 'No effort that counts has a rate of rise over this window.',
});
