import { mean } from '../signal/moments.ts';
import { type Estimate, slopeEstimate } from './slope-estimate.ts';

/** repetitions averaged at the two ends and in the rolling mean */
const WINDOW = 3;

/** How height fades over a set. */
export interface HeightFade {
  /** Theil-Sen slope of height or rise on repetition number [m] */
  readonly slopeM: Estimate | null;
  /** the same in percent of the reference */
  readonly slopePercent: Estimate | null;
  /** (mean of first three - mean of last three) / mean of first three */
  readonly dropFraction: number | null;
  /** last repetition of the first three in a row whose mean lies below the share of the reference */
  readonly firstBelow: readonly { readonly fraction: number; readonly repetition: number | null }[];
}

function scaled(estimate: Estimate | null, factor: number): Estimate | null {
  if (estimate === null) return null;
  const { value, low, high } = estimate;
  return { value: value * factor, low: low === null ? null : low * factor, high: high === null ? null : high * factor };
}

/**
 * Fade of height over a set: robust slope per repetition, drop from the first three to the last three, and the first
 * repetition at which the mean of it and the two before lies below a share of the reference.
 *
 * @param heightsM - height or rise of each repetition in order; undefined where it cannot be judged [m]
 * @param referenceM - the reference; undefined when there is none [m]
 * @param fractions - shares of the reference [-]
 * @returns slope in metres and in percent of the reference per repetition, drop as a share, repetitions from 1 [m, %, -]
 *
 * Source: common practice, no source; slope by Sen (1968), J Am Stat Assoc 63:1379
 */
export function heightFade(
  heightsM: readonly (number | undefined)[],
  referenceM: number | undefined,
  fractions: readonly number[],
): HeightFade {
  const known = heightsM.flatMap((y, i) => (y === undefined ? [] : [{ x: i + 1, y }]));
  const slopeM = slopeEstimate(known);
  const values = known.map((point) => point.y);
  const firstMean = values.length >= 2 * WINDOW ? mean(values.slice(0, WINDOW)) : undefined;
  const dropFraction =
    firstMean === undefined || firstMean <= 0 ? null : (firstMean - mean(values.slice(-WINDOW))) / firstMean;
  const firstBelow = fractions.map((fraction) => {
    if (referenceM === undefined) return { fraction, repetition: null };
    for (let i = WINDOW - 1; i < known.length; i++) {
      if (mean(values.slice(i - WINDOW + 1, i + 1)) < fraction * referenceM) {
        return { fraction, repetition: known[i].x };
      }
    }
    return { fraction, repetition: null };
  });
  const percent = referenceM === undefined || referenceM <= 0 ? null : scaled(slopeM, 100 / referenceM);
  return { slopeM, slopePercent: percent, dropFraction, firstBelow };
}
