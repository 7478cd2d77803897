import type { EffortMethod } from '../efforts/effort-settings.ts';
import type { HopSettings } from '../hops/hop-settings.ts';
import type { BlockCounterSettings } from '../raises/block-settings.ts';
import type { BodySettings } from '../raises/body/settings.ts';
import type { HeelSettings } from '../raises/heel/heel-settings.ts';

/** How repetitions are judged and set measures taken, apart from what the protocol says. */
export interface JudgingSettings {
  readonly gravityMps2: number;
  readonly plainNoBelow: number;
  readonly plainYesAbove: number;
  readonly movementCutoffHz: number;
  readonly massRelativeU: number;
  readonly ankleModelRelativeU: number;
  readonly bottomUM: number;
  readonly leanURad: number;
  readonly speedRelativeU: number;
  readonly forceRelativeU: number;
  readonly kneeDipWindowS: number;
  readonly kneePeakPeriodS: number;
  readonly plateauLeastS: number;
  readonly swayS: number;
  readonly impactBeforeS: number;
  readonly impactAfterS: number;
  readonly assumedLeverRelativeU: number;
  readonly draws: number;
  readonly seed: number;
  readonly dropSign: number;
  readonly exertionFull: number;
  readonly exertionLow: number;
  readonly topMovedS: number;
  readonly gapShareMost: number;
}

/** When a signal cannot be that of a person on the placement that was given. */
export interface SignalLimits {
  readonly heelMoveLeastM: number;
  readonly heelMoveMostM: number;
  readonly standingForceLeastN: number;
  readonly standingForceMostN: number;
  readonly gravityShareLeast: number;
  readonly gravityShareMost: number;
  readonly turnMostRadps: number;
  readonly railShareMost: number;
  readonly steadyWindowS: number;
  readonly steadyRad: number;
  readonly steadyShareLeast: number;
  readonly flatShare: number;
  readonly riseShareLeast: number;
  readonly directionFromM: number;
  readonly restS: number;
  readonly rateLeastHz: number;
  readonly intervalRatioMost: number;
}

/** How far a count by hand can be trusted. */
export interface HandSettings {
  /** repetitions that a count by hand may be wrong by, at 95 % [-] */
  readonly countMost: number;
  /** standard uncertainty of the instant of a tap [s] */
  readonly tapUS: number;
  /** two taps that lie closer may be one [s] */
  readonly apartLeastS: number;
  /** largest relative standard uncertainty of a mean period that is still shown [-] */
  readonly periodRelativeUMost: number;
}

/** Every number that an assessment uses and no protocol states; plain JSON. */
export interface Settings {
  /** detection from heel or foot */
  readonly heel: HeelSettings;
  /** detection from trunk or platform */
  readonly body: BodySettings;
  /** the count while samples arrive */
  readonly block: BlockCounterSettings;
  readonly judging: JudgingSettings;
  /** a count by hand */
  readonly hand: HandSettings;
  /** what a signal of a person looks like */
  readonly signal: SignalLimits;
  /** isometric efforts */
  readonly efforts: EffortMethod;
  /** repeated hops */
  readonly hops: HopSettings;
}
