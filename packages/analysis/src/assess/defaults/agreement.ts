import type { NarrowIntervalSettings } from '../../agreement/absolute-interval.ts';
import type { UsableErrorSettings } from '../../agreement/usable-error.ts';

/** Settings of what is said about agreement and repeatability. */
export const agreementDefaults: {
  readonly level: number;
  readonly reach: number;
  readonly changeLevels: readonly number[];
  readonly usable: UsableErrorSettings;
  readonly narrow: NarrowIntervalSettings;
} = {
  /** level of every interval [-]; common practice, no source */
  level: 0.95,
  /** standard deviations from the bias to a limit [-]; Bland & Altman (1999), Stat Methods Med Res 8:135 (from memory) */
  reach: 1.96,
  /** levels of the detectable change [-]; Weir (2005), J Strength Cond Res 19:231; 0.8: common practice, no source */
  changeLevels: [0.95, 0.9, 0.8],
  /** pairs of tests for an own standard error [-], level of the cautious bound [-]; common practice, no source */
  usable: { leastPairs: 15, pairsForEstimate: 30, cautiousLevel: 0.8 },
  /** where the interval of ICC(2,.) claims too much [-]; ours, by the simulation that the function tells of */
  narrow: { ratersEnough: 10, ratersOverRest: 0.5 },
};
