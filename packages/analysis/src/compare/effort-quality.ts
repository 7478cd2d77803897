import { effortOf } from '../assess/effort.ts';
import type { Effort, SetMeasures, TestEnd } from '../assess/report.ts';
import type { JudgingSettings } from '../assess/settings.ts';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';

/** What a judgement of a repeated effort looks at. */
export type EnduranceInput = 'end-reason' | 'exertion' | 'height-drop' | 'tempo-drift';

/** Whether the effort of a set shows capacity, and what the answer rests on. */
export interface EnduranceEffort extends Effort {
  readonly used: readonly EnduranceInput[];
  /** not known: neither zero nor as usual */
  readonly missing: readonly EnduranceInput[];
}

/**
 * Whether the effort of a set to fatigue was full, with the inputs that were known and those that were missing.
 *
 * @param measures - of the set [-]
 * @param end - how the test ended [-]
 * @param exertion - at the end, 0 to 10; null is not known [-]
 * @param settings - limits of the signs [-]
 * @returns the verdict of the report, with used and missing inputs [-]
 * @throws {@link InputError} `out-of-range` for an exertion outside 0 to 10
 *
 * Source: common practice, no source
 */
export function enduranceEffort(
  measures: SetMeasures,
  end: TestEnd,
  exertion: number | null,
  settings: JudgingSettings,
): EnduranceEffort {
  if (exertion !== null) requireRange(exertion, exertion >= 0 && exertion <= 10, 'exertion', '0 to 10');
  const drift = measures.tempo.driftS;
  const known: readonly (readonly [EnduranceInput, boolean])[] = [
    ['end-reason', end.reasonGiven !== null],
    ['exertion', exertion !== null],
    ['height-drop', measures.fatigue.dropFraction !== null],
    ['tempo-drift', drift !== null && drift.low !== null],
  ];
  return {
    ...effortOf(measures, end, exertion === null ? undefined : { exertion }, settings),
    used: known.filter(([, is]) => is).map(([input]) => input),
    missing: known.filter(([, is]) => !is).map(([input]) => input),
  };
}

/** What a judgement of a maximal hold looks at. */
export type IsometricInput = 'trials' | 'plateau';

/** Trials of a maximal hold on one side, in the order in which they were done. */
export interface IsometricTrials {
  /** best force of each trial; null where one was not measured [N] */
  readonly peaksN: readonly (number | null)[];
  /** length of the plateau of the best trial; null is not known [s] */
  readonly plateauS: number | null;
}

/** Limits of a maximal hold. */
export interface IsometricLimits {
  /** share by which the best two trials may differ, and by which a last trial may exceed the others: `alikeGood` of the protocol [-] */
  readonly trialsAlike: number;
  /** of the same name in the protocol [s] */
  readonly plateauLeast: number;
}

/** Whether the trials of a hold show a maximum, and what the answer rests on; the words are neutral on purpose. */
export interface IsometricQuality {
  readonly good: Verdict;
  readonly reasons: readonly (
    | 'trials-differ'
    | 'last-trial-still-rising'
    | 'plateau-short'
    | 'too-few-trials'
    | 'plateau-not-known'
    | 'trial-not-measured'
  )[];
  readonly used: readonly IsometricInput[];
  readonly missing: readonly IsometricInput[];
}

/**
 * Whether the trials of a maximal hold show a maximum: the best two alike, the last one not still rising, a plateau long enough.
 *
 * @param trials - in the order in which they were done [N, s]
 * @param limits - see {@link IsometricLimits} [-, s]
 * @returns yes with every input known and met; no when a known one is not met; else cannot tell [-]
 * @throws {@link InputError} `out-of-range` for a peak that is not above 0 or a plateau below 0
 *
 * Source: common practice, no source; limits stand with the protocols in the shared data
 */
export function isometricEffort(trials: IsometricTrials, limits: IsometricLimits): IsometricQuality {
  const { peaksN, plateauS } = trials;
  for (const peak of peaksN) if (peak !== null) requireRange(peak, peak > 0, 'peaksN', '> 0');
  if (plateauS !== null) requireRange(plateauS, plateauS >= 0, 'plateauS', '>= 0');
  const known = peaksN.filter((peak) => peak !== null);
  const [best, second] = [...known].sort((a, b) => b - a);
  const enough = known.length >= 2;
  // a step beyond the limit by a rounding error is none
  const most = limits.trialsAlike * (1 + 1e-9);
  const whole = known.length === peaksN.length;
  // a trial that was not measured may have been as good as the best
  const apart = enough && whole && (best - second) / best > most;
  const last = peaksN.at(-1) ?? null;
  const rising = apart && last === best;
  const short = plateauS !== null && plateauS < limits.plateauLeast;
  const found: readonly (readonly [IsometricQuality['reasons'][number], boolean])[] = [
    ['trials-differ', apart && !rising],
    ['last-trial-still-rising', rising],
    ['plateau-short', short],
    ['too-few-trials', !enough],
    ['plateau-not-known', plateauS === null],
    ['trial-not-measured', !whole],
  ];
  const trialsKnown = enough && whole;
  const all = trialsKnown && plateauS !== null;
  return {
    good: apart || short ? 'no' : all ? 'yes' : 'cannot_tell',
    reasons: found.filter(([, is]) => is).map(([reason]) => reason),
    used: [...(known.length > 0 ? (['trials'] as const) : []), ...(plateauS === null ? [] : (['plateau'] as const))],
    missing: [...(trialsKnown ? [] : (['trials'] as const)), ...(plateauS === null ? (['plateau'] as const) : [])],
  };
}
