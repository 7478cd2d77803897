import type { MeasureRule } from './effort-settings.ts';
import type { Onset } from './onset.ts';

/** Whether the start of an effort is distinct, and by what it was judged. */
export interface DistinctStart {
  /** cannot tell where the uncertainty of the onset is not that of a fitted rise */
  readonly distinct: 'yes' | 'no' | 'cannot_tell';
  /** half of the 95 % interval of the onset; null where nobody can tell [s] */
  readonly withinS: number | null;
  /** the limit that held; null where the protocol sets none [s] */
  readonly limitS: number | null;
}

/** Half of a 95 % interval in standard uncertainties. */
const half95 = 1.96;

/**
 * Whether the start of an effort is distinct: its onset is known to the limit of the protocol, or to one sample where samples
 * are further apart than that. A soft start, slack, noise and a slow sensor all make a start that is not.
 *
 * @param onset - as measured, see {@link Onset} [s]
 * @param seen - whether the samples before and in the rise are all there [-]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @param rule - the limit; infinite where the protocol sets none [s]
 * @returns yes, no or cannot tell, with half-width and limit [s]
 *
 * Source: ours
 */
export function distinctStart(
  onset: Pick<Onset, 'timeS' | 'method'>,
  seen: boolean,
  sampleRateHz: number,
  { onsetWithinS }: Pick<MeasureRule, 'onsetWithinS'>,
): DistinctStart {
  const limitS = Number.isFinite(onsetWithinS) ? Math.max(onsetWithinS, 1 / sampleRateHz) : null;
  if (!seen || onset.method === 'line') return { distinct: 'cannot_tell', withinS: null, limitS };
  const withinS = half95 * onset.timeS.u;
  return { distinct: limitS === null || withinS <= limitS ? 'yes' : 'no', withinS, limitS };
}
