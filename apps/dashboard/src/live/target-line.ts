import type { ProvisionalRaise } from '@surae/analysis';
import type { Protocol } from '@surae/shared';

/** The height that the next repetition is held against on the screen; provisional like the count. */
export interface TargetLine {
  readonly referenceM: number;
  readonly targetM: number;
}

/**
 * The mean of the best of the first repetitions so far, and the share of it that the protocol asks for. Undefined while there
 * are fewer repetitions than the mean is taken of.
 */
export function targetLine(
  raises: readonly Pick<ProvisionalRaise, 'heightM'>[],
  { referenceRaises, referenceBest, heightFraction }: Protocol['parameters'],
): TargetLine | undefined {
  if (heightFraction.value === null) return undefined;
  const bestCount = referenceBest.value ?? 2;
  const heights = raises.slice(0, referenceRaises.value ?? 5).map(({ heightM }) => heightM);
  const best = heights.sort((a, b) => b - a).slice(0, bestCount);
  if (best.length < bestCount) return undefined;
  const referenceM = best.reduce((sum, heightM) => sum + heightM, 0) / bestCount;
  return { referenceM, targetM: heightFraction.value * referenceM };
}
