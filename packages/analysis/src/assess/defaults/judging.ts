import type { JudgingSettings } from '../settings.ts';

/** standard acceleration of gravity [m/s2]: ISO 80000-3, exact */
const GRAVITY = 9.80665;

/** How repetitions are judged and set measures taken, apart from what the protocol says. */
export const judgingDefaults: JudgingSettings = {
  gravityMps2: GRAVITY,
  // probability of being valid below and above which a verdict is plain [-]: common practice, no source
  plainNoBelow: 0.2,
  plainYesAbove: 0.8,
  // cut-off of the low-pass for power and speed [Hz]: Winter 2009 (movement, 6 Hz)
  movementCutoffHz: 6,
  // standard uncertainty of a weighed body mass [-]: ours, scale and clothes
  massRelativeU: 0.005,
  // standard uncertainty of the model ankle rise that no input shows [-]: ours, the pivot moves toward the toes
  ankleModelRelativeU: 0.05,
  // standard uncertainty of the level of the bottom beyond the stillness of the stance [m]: ours
  bottomUM: 0.0015,
  // standard uncertainty of a trunk pitch change [rad]: ours, 1.5 degrees after fusion
  leanURad: 0.026,
  // relative standard uncertainty of a vertical speed at contact [-]: ours
  speedRelativeU: 0.1,
  // relative standard uncertainty of a force of a few tens of milliseconds [-]: ours
  forceRelativeU: 0.005,
  // time before the start in which an unweighting dip is looked for [s]: ours
  kneeDipWindowS: 0.3,
  // period from which a force peak in the rise is a sign of the knee [s]: common practice, no source (slow tempo)
  kneePeakPeriodS: 3,
  // plateau long enough for the mean force to show the hands [s]: common practice, no source
  plateauLeastS: 0.5,
  // time over which sway makes forces alike: one independent sample in each [s]: ours
  swayS: 0.1,
  // span around the end of a repetition in which an impact on the floor shows [s]: ours
  impactBeforeS: 0.1,
  impactAfterS: 0.2,
  // relative standard uncertainty of a heel lever that nobody measured [-]: ours, as the detection takes it
  assumedLeverRelativeU: 0.1,
  // random draws of the count interval and the seed [-]: ours
  draws: 2000,
  seed: 20_251,
  // fall of height that counts as a sign of fatigue [-]: common practice, no source
  dropSign: 0.1,
  // exertion from which an effort is full, and below which it is not, of 10 [-]: common practice, no source
  exertionFull: 8,
  exertionLow: 7,
  // tops of block and final pass that differ by more are listed [s]: ours, two samples at 50 Hz
  topMovedS: 0.04,
  // share of the set lost in gaps from which the trace is not usable [-]: common practice, no source
  gapShareMost: 0.05,
};
