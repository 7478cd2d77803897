import { mean } from '../signal/moments.ts';
import type { Raise } from './detection.ts';
import { type Estimate, slopeEstimate } from './slope-estimate.ts';

/** The parts of one repetition in time. */
export interface TempoParts {
  /** leaving the bottom to reaching the hold at the top [s] */
  readonly upS: number;
  readonly topHoldS: number;
  readonly downS: number;
  /** at the bottom until the next repetition starts; undefined after the last [s] */
  readonly lowS: number | undefined;
  /** start to next start; undefined for the last [s] */
  readonly cycleS: number | undefined;
  /** top of the repetition before to this top; undefined for the first [s] */
  readonly periodS: number | undefined;
  readonly periodUS: number | undefined;
}

/**
 * Parts of each repetition: up, hold at the top, down, time at the bottom; their sum is the cycle. The period runs from
 * top to top, because a top is known to a few milliseconds and the start of a smooth rise is not.
 *
 * @param raises - repetitions in time order [s]
 * @returns one entry per repetition [s]
 *
 * Source: definition
 */
export function tempoParts(raises: readonly Raise[]): TempoParts[] {
  return raises.map((raise, i) => {
    const before = raises[i - 1] as Raise | undefined;
    const next = raises[i + 1] as Raise | undefined;
    return {
      upS: raise.highFromS - raise.startS,
      topHoldS: raise.highToS - raise.highFromS,
      downS: raise.endS - raise.highToS,
      lowS: next === undefined ? undefined : Math.max(0, next.startS - raise.endS),
      cycleS: next === undefined ? undefined : next.startS - raise.startS,
      periodS: before === undefined ? undefined : raise.topS - before.topS,
      periodUS: before === undefined ? undefined : Math.hypot(raise.topUS, before.topUS),
    };
  });
}

/** Tempo of a set; null where there are too few repetitions. */
export interface SetTempo {
  readonly meanPeriodS: number | null;
  readonly perMinute: number | null;
  readonly meanUpS: number | null;
  readonly meanTopS: number | null;
  readonly meanDownS: number | null;
  readonly meanLowS: number | null;
  readonly driftS: Estimate | null;
  readonly meanBeatErrorS: number | null;
}

function meanOrNull(values: readonly (number | undefined)[]): number | null {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? null : mean(known);
}

/**
 * Tempo of a set: means of the parts, repetitions per minute from the mean period, and the drift of the period.
 *
 * @param parts - parts of each repetition in order, as far as they were measured [s]
 * @param cycleTargetS - period of the beat; undefined when none is given [s]
 * @returns means and drift; null where there are too few repetitions [s, 1/min]
 *
 * Source: definition; drift by Sen (1968), J Am Stat Assoc 63:1379
 */
export function setTempo(parts: readonly Partial<TempoParts>[], cycleTargetS: number | undefined): SetTempo {
  const meanPeriodS = meanOrNull(parts.map((part) => part.periodS));
  const timed = parts.flatMap((part, i) => (part.periodS === undefined ? [] : [{ x: i + 1, y: part.periodS }]));
  return {
    meanPeriodS,
    perMinute: meanPeriodS === null || meanPeriodS <= 0 ? null : 60 / meanPeriodS,
    meanUpS: meanOrNull(parts.map((part) => part.upS)),
    meanTopS: meanOrNull(parts.map((part) => part.topHoldS)),
    meanDownS: meanOrNull(parts.map((part) => part.downS)),
    meanLowS: meanOrNull(parts.map((part) => part.lowS)),
    driftS: slopeEstimate(timed),
    meanBeatErrorS: meanPeriodS === null || cycleTargetS === undefined ? null : meanPeriodS - cycleTargetS,
  };
}
