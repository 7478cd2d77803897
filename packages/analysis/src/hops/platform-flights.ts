import { median, medianAbsoluteDeviation, quantile } from '../signal/order-statistics.ts';
import type { Flight, HopEdge } from './hop.ts';
import type { HopSettings } from './hop-settings.ts';
import { type Run, runsBelow } from './runs.ts';

/** Times in the air as a platform shows them. */
export interface PlatformFlights {
  readonly flights: readonly Flight[];
  /** reading of the platform with nobody on it [N] */
  readonly zeroN: number;
  readonly noiseN: number;
}

/** The force at its own times. */
export interface ForceSignal {
  readonly timesS: Float64Array;
  readonly force: Float64Array;
  readonly intervalS: number;
  /** by how much a stamp may be wrong [s] */
  readonly jitterS: number;
}

/** The middle half of a run: what the foot does at its ends is left out. */
function middleOf(run: Run, force: Float64Array): Float64Array {
  const quarter = Math.floor((run.to - run.from) / 4);
  return force.subarray(run.from + quarter, run.to - quarter);
}

/** Where a straight line between two samples crosses a level [s]. */
function crossing({ timesS, force }: ForceSignal, before: number, level: number): number {
  const share = (level - force[before]) / (force[before + 1] - force[before]);
  return timesS[before] + Math.min(1, Math.max(0, share)) * (timesS[before + 1] - timesS[before]);
}

/**
 * When the force was nothing: from the threshold back along the line through threshold and a higher level.
 * `step` is 1 for a landing at `at` (the sample before the crossing) and -1 for a take-off.
 */
function edge(
  signal: ForceSignal,
  at: number,
  step: 1 | -1,
  levels: { readonly zeroN: number; readonly lowN: number; readonly highN: number; readonly noiseN: number },
  settings: HopSettings,
): HopEdge | null {
  const { timesS, force } = signal;
  if (at < 0 || at + 1 >= force.length) return null;
  if (timesS[at + 1] - timesS[at] > settings.series.gapS) return null;
  const lowS = crossing(signal, at, levels.lowN);
  let above = step === 1 ? at + 1 : at;
  while (above > 0 && above < force.length - 1 && force[above] < levels.highN) {
    if (Math.abs(timesS[above + step] - timesS[above]) > settings.series.gapS) return null;
    above += step;
  }
  if (!(force[above] >= levels.highN)) return null;
  const highS = crossing(signal, step === 1 ? above - 1 : above, levels.highN);
  const perN = (highS - lowS) / (levels.highN - levels.lowN);
  const beyondS = perN * (levels.lowN - levels.zeroN);
  const { edgeU, modelRelativeU } = settings.platform;
  return {
    atS: lowS - beyondS,
    ownUS: Math.hypot(edgeU * signal.intervalS, signal.jitterS, perN * levels.noiseN),
    sharedUS: modelRelativeU * Math.abs(beyondS),
  };
}

/**
 * Times in the air on a platform: stretches in which the force is that of the empty platform. The reading of the empty
 * platform comes from these stretches themselves, so that a platform that was not zeroed does no harm; ringing that lifts
 * the force over the threshold for a moment ends no flight.
 *
 * @param signal - vertical force at its own times [s, N]
 * @param settings - see {@link HopSettings} [-]
 * @returns the flights in time order, and the zero; undefined when the force is never near that of an empty platform [s, N]
 *
 * Source: ours; a threshold of 10 to 20 N is common practice
 */
export function platformFlights(signal: ForceSignal, settings: HopSettings): PlatformFlights | undefined {
  const { timesS, force } = signal;
  const { series, platform } = settings;
  const low = quantile(force, 0.01);
  const high = quantile(force, 0.95);
  if (!(high > low)) return undefined;
  const longEnough = (run: Run): boolean => timesS[run.to - 1] - timesS[run.from] >= series.flightLeastS;
  const coarse = runsBelow(
    timesS,
    force,
    low + platform.coarseShare * (high - low),
    platform.ringS,
    series.flightLeastS + series.contactLeastS,
  ).filter(longEnough);
  if (coarse.length === 0) return undefined;
  const zeroN = median(coarse.map((run) => median(middleOf(run, force))));
  const noiseN = median(coarse.map((run) => medianAbsoluteDeviation(middleOf(run, force))));
  const lowN = zeroN + Math.max(platform.contactN, platform.noiseTimes * noiseN);
  const highN = Math.max(2 * lowN - zeroN, zeroN + platform.slopeShare * (high - zeroN));
  const levels = { zeroN, lowN, highN, noiseN };
  const flights = runsBelow(timesS, force, lowN, platform.ringS, series.flightLeastS + series.contactLeastS)
    .filter(longEnough)
    .map((run) => ({
      takeOff: edge(signal, run.from - 1, -1, levels, settings),
      landing: edge(signal, run.to - 1, 1, levels, settings),
      middleS: (timesS[run.from] + timesS[run.to - 1]) / 2,
    }));
  return { flights, zeroN, noiseN };
}
