import type { Placement, Side } from '@surae/analysis';

export const TESTS = ['heel-raise', 'hop-series'] as const;
export const PLACEMENTS = ['heel', 'foot', 'trunk', 'platform'] as const;
export const SIDES = ['left', 'right'] as const;

export function isPlacement(word: string): word is Placement {
  return PLACEMENTS.some((known) => known === word);
}

export function isSide(word: string): word is Side {
  return SIDES.some((known) => known === word);
}
