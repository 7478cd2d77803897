import type { Acceptance } from './acceptance.ts';
import type { DistinctStart } from './distinct-start.ts';
import type { EarlyRise } from './early-rise.ts';
import type { Figure } from './figure.ts';
import type { PullUnit } from './pull-signal.ts';
import type { RiseRate } from './rise-rates.ts';

/** A force as the sensor reads it, turned so that pulls are positive, and above the resting level. */
export interface GrossAndNet {
  readonly gross: Figure;
  readonly net: Figure;
}

/** One effort; forces in N or N.m as `unit` says. */
export interface IsometricEffort {
  readonly unit: PullUnit;
  readonly kind: 'ramp' | 'fast';
  /** onset and end [s] */
  readonly onsetS: Figure;
  readonly onsetMethod: 'curve' | 'line';
  /** whether it starts distinctly; null for a ramp, of which nobody asks it */
  readonly start: DistinctStart | null;
  readonly endS: Figure;
  /** resting level at the time of the peak, turned like the gross force */
  readonly rest: Figure;
  /** greatest force, low-passed, and when [s] */
  readonly peak: GrossAndNet;
  readonly peakS: number;
  /** greatest mean over the window of the settings, and when the window begins [s]; null when the effort is shorter */
  readonly bestMean: GrossAndNet | null;
  readonly bestMeanFromS: number | null;
  /** time within the share of the peak that the settings give [s] */
  readonly plateauS: Figure;
  /** standard deviation over mean on the plateau, slow course taken off [-]; null without a plateau of half a second */
  readonly unsteadiness: Figure | null;
  readonly timeToPeakS: Figure;
  /** area above the resting level from onset to end [unit s] */
  readonly impulse: Figure;
  readonly rates: readonly RiseRate[];
  readonly early: EarlyRise;
  readonly acceptance: Acceptance;
}
