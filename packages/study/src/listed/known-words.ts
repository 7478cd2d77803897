import type { Placement, PullPlacement, Side } from '@surae/analysis';

export const TESTS = ['heel-raise', 'isometric', 'hop-series'] as const;
export type TestName = (typeof TESTS)[number];

/** Placements of heel raises, and those of isometric efforts. */
export const SENSED_PLACEMENTS = ['heel', 'foot', 'trunk', 'platform'] as const;
export const PLACEMENTS = [...SENSED_PLACEMENTS, 'hand'] as const;
export const PULL_PLACEMENTS = ['inline', 'platform'] as const;
export const SIDES = ['left', 'right'] as const;

/** Every word for a place of a sensor, whichever test it belongs to. */
export const ALL_PLACEMENTS = [...PLACEMENTS, 'inline'] as const;
export type AnyPlacement = Placement | PullPlacement;

export function isPlacement(word: string): word is Placement {
  return PLACEMENTS.some((known) => known === word);
}

export function isPullPlacement(word: string): word is PullPlacement {
  return PULL_PLACEMENTS.some((known) => known === word);
}

export function isSide(word: string): word is Side {
  return SIDES.some((known) => known === word);
}
