import type { StudyFile } from '../declared/study-document.ts';

/** What a comparison says, and in which direction. */
export interface Conclusion {
  /** whether the two differ */
  readonly differs: 'yes' | 'no' | 'cannot_tell';
  /** which is greater; null unless they differ */
  readonly greater: 'first' | 'second' | null;
}

/**
 * What an interval says of a difference: yes where it holds no difference of none; no where it lies wholly within the margin below
 * which a difference does not matter; else cannot tell. Without a margin no is never said. An interval that is within the margin and
 * holds no difference of none says no: there is one, and it does not matter.
 *
 * @param interval - of a difference, or of a ratio
 */
export function conclusionOf(
  { low, high }: { readonly low: number; readonly high: number },
  { scale, margin }: Pick<StudyFile['comparison'], 'scale' | 'margin'>,
): Conclusion {
  const isRatio = scale === 'ratio';
  const none = isRatio ? 1 : 0;
  const [least, most] = margin === null ? [none, none] : isRatio ? [1 / margin, margin] : [-margin, margin];
  if (margin !== null && low > least && high < most) return { differs: 'no', greater: null };
  if (low > none) return { differs: 'yes', greater: 'first' };
  if (high < none) return { differs: 'yes', greater: 'second' };
  return { differs: 'cannot_tell', greater: null };
}
