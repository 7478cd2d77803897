import type { Side } from '@surae/analysis';

/** The line of a leg: full for the left one, dashed for the right one [px]. */
export function sideDash(side: Side | null | undefined): readonly number[] {
  return side === 'right' ? [8, 4] : [];
}
