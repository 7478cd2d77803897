import type { PracticeRaise, ProvisionalRaise } from '@surae/analysis';
import type { Protocol } from '@surae/shared';

/** The height that the next repetition is held against on the screen; provisional like the count. */
export interface TargetLine {
  readonly referenceM: number;
  readonly targetM: number;
}

function meanOfBest(heights: readonly number[], bestCount: number): number | undefined {
  const best = [...heights].sort((a, b) => b - a).slice(0, bestCount);
  return best.length < bestCount ? undefined : best.reduce((sum, heightM) => sum + heightM, 0) / bestCount;
}

/**
 * The mean of the best practice raises, or of the best of the first repetitions so far, and the share of it that the protocol
 * asks for. One of the first repetitions that beats the practice raises by more than the protocol allows takes their place.
 * Undefined while there are fewer than the mean is taken of.
 */
export function targetLine(
  raises: readonly Pick<ProvisionalRaise, 'heightM'>[],
  { referenceRaises, referenceBest, referenceRaisedBy, heightFraction }: Protocol['parameters'],
  practice: readonly PracticeRaise[] = [],
): TargetLine | undefined {
  if (heightFraction.value === null) return undefined;
  const bestCount = referenceBest.value ?? 2;
  const first = raises.slice(0, referenceRaises.value ?? 5).map(({ heightM }) => heightM);
  const practised = meanOfBest(
    practice.map(({ heightM }) => heightM),
    bestCount,
  );
  const highest = Math.max(...first);
  const beaten = practised !== undefined && highest > practised * (1 + (referenceRaisedBy.value ?? 0));
  const referenceM = beaten ? highest : (practised ?? meanOfBest(first, bestCount));
  return referenceM === undefined ? undefined : { referenceM, targetM: heightFraction.value * referenceM };
}
