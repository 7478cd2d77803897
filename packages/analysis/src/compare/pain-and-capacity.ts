import type { EndReason } from '@surae/shared';
import { endClass } from '../assess/test-end.ts';
import { requireRange } from '../check.ts';
import type { Verdict } from '../raises/criteria/finding.ts';

export type PainInput = 'end-reason' | 'peak-pain' | 'resting-pain' | 'sharp-pain' | 'high-irritability';

/** What is known of the pain of a set; null is not known. */
export interface SetPain {
  readonly endReason: EndReason | null;
  /** 0 to 10 */
  readonly peak: number | null;
  /** before the test, 0 to 10 */
  readonly resting: number | null;
  readonly sharp: boolean | null;
  readonly highIrritability: boolean | null;
}

/** Limits of pain during a test, of 10. */
export interface PainLimits {
  readonly painMost: number;
  readonly painMostIrritable: number;
  readonly painRiseMost: number;
}

/** What the count of a set stands for, and how it was tolerated. */
export interface PainFinding {
  /** capacity is what the calf could do; tolerated what was done before the pain ended it */
  readonly countShows: 'capacity' | 'tolerated' | 'lower-bound' | 'neither' | 'not-known';
  /** repetitions before the limit of pain; null where pain did not end the set */
  readonly toleratedRepetitions: number | null;
  /** pain stayed within its limit and was not sharp */
  readonly withinLimit: Verdict;
  /** pain rose over its resting level by no more than allowed */
  readonly riseWithin: Verdict;
  /** the limit that was held against; the stricter one where irritability is not known, for then yes would be a guess */
  readonly limit: number;
  readonly used: readonly PainInput[];
  readonly missing: readonly PainInput[];
}

function requirePain(value: number | null, argument: string): void {
  if (value !== null) requireRange(value, value >= 0 && value <= 10, argument, '0 to 10');
}

const SHOWS = {
  capacity: 'capacity',
  tolerance: 'tolerated',
  censored: 'lower-bound',
  incomplete: 'neither',
  probe: 'neither',
  unknown: 'not-known',
} as const satisfies Record<string, PainFinding['countShows']>;

/**
 * What the count of a set stands for: one that pain ended is what was tolerated and never what the calf could do.
 *
 * @param repetitions - scored repetitions, a whole number >= 0 [-]
 * @param pain - what is known of it [-]
 * @param limits - see {@link PainLimits} [-]
 * @returns see {@link PainFinding} [-]
 * @throws {@link InputError} `out-of-range` for a count that is no whole number from 0, or a pain outside 0 to 10
 *
 * Source: pain-monitoring model: Silbernagel (2007), Am J Sports Med 35:897, as quoted elsewhere; limits stand with the shared data
 */
export function painFinding(repetitions: number, pain: SetPain, limits: PainLimits): PainFinding {
  const { endReason, peak, resting, sharp, highIrritability } = pain;
  requireRange(repetitions, Number.isInteger(repetitions) && repetitions >= 0, 'repetitions', 'a whole number >= 0');
  requirePain(peak, 'pain.peak');
  requirePain(resting, 'pain.resting');
  const countShows = SHOWS[endReason === null ? 'unknown' : endClass(endReason)];
  const limit = highIrritability === false ? limits.painMost : limits.painMostIrritable;
  // above the wider limit it is too much either way; between the two it hangs on how irritable the tendon is
  const surely = highIrritability === true ? limits.painMostIrritable : limits.painMost;
  const over = sharp === true || (peak !== null && peak > surely);
  const within = sharp === false && peak !== null && peak <= limit;
  const rise = peak === null || resting === null ? null : peak - resting;
  const known: readonly (readonly [PainInput, boolean])[] = [
    ['end-reason', endReason !== null],
    ['peak-pain', peak !== null],
    ['resting-pain', resting !== null],
    ['sharp-pain', sharp !== null],
    ['high-irritability', highIrritability !== null],
  ];
  return {
    countShows,
    toleratedRepetitions: countShows === 'tolerated' ? repetitions : null,
    withinLimit: over ? 'no' : within ? 'yes' : 'cannot_tell',
    riseWithin: rise === null ? 'cannot_tell' : rise <= limits.painRiseMost ? 'yes' : 'no',
    limit,
    used: known.filter(([, is]) => is).map(([input]) => input),
    missing: known.filter(([, is]) => !is).map(([input]) => input),
  };
}
