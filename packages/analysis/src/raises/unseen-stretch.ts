import { durationS, type Interval, overlapS } from '../signal/intervals.ts';

/** Longest stretch without samples across which a rhythm may be taken to go on [s]; ours: one repetition on the usual beat. */
const MOST_BRIDGED_S = 2;

/** Share of a repetition above which it can only be supposed [-]; ours. */
const UNSEEN_SHARE = 0.5;

/**
 * Stretches without samples that are too long to say what happened in them: a person may have gone on, or rested.
 *
 * @param gaps - stretches without samples [s]
 * @returns those of them that no rhythm bridges [s]
 *
 * Source: ours
 */
export function unseenStretches(gaps: readonly Interval[]): Interval[] {
  return gaps.filter((gap) => durationS(gap) > MOST_BRIDGED_S);
}

/**
 * Whether most of a repetition lies where nothing was seen, so that it can only be supposed.
 *
 * @param repetition - from its start to its end [s]
 * @param stretches - from {@link unseenStretches} [s]
 * @returns true when it was not seen [-]
 *
 * Source: ours
 */
export function wentUnseen(repetition: Interval, stretches: readonly Interval[]): boolean {
  return stretches.some((stretch) => overlapS(repetition, stretch) > UNSEEN_SHARE * durationS(repetition));
}
