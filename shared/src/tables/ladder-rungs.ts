import type { Entry } from '../entry.ts';

/** One rung of what is tried before a test, the lightest first. */
export interface LadderRungEntry extends Entry {
  readonly code: 'walk' | 'two-leg-raise' | 'one-raise' | 'ten-raises' | 'three-hops' | 'ten-hops';
}

export type LadderRung = LadderRungEntry['code'];

const practice = { version: '1', unit: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** What is tried on each leg, rung by rung, until one hurts more than the limit for pain or cannot be done. */
export const LADDER_RUNGS: readonly LadderRungEntry[] = (
  ['walk', 'two-leg-raise', 'one-raise', 'ten-raises', 'three-hops', 'ten-hops'] as const
).map((code) => ({ ...practice, id: `ladder.${code}`, code }));
