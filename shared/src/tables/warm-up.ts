import type { Entry } from '../entry.ts';

/** One number of the preparation before a set. */
export interface WarmUpEntry extends Entry {
  readonly value: number;
}

const read = {
  version: '1',
  source: 'Sleeswijk Visser 2025 Braz J Phys Ther 29:101188 (ten raises on both legs, one minute of rest)',
  mark: 'read',
} as const;
const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

/** What can be done before a set to fatigue, and when two references differ so much that it is said. */
export const WARM_UP = {
  raises: { ...read, id: 'warm-up.raises', unit: '1', value: 10 },
  rest: { ...read, id: 'warm-up.rest', unit: 's', value: 60 },
  practiceRaises: { ...practice, id: 'warm-up.practice-raises', unit: '1', value: 3 },
  /** the lower reference as a share of the higher one, under which it is said that a target is lower */
  lowerReference: {
    version: '1',
    source: 'ours: no published line was found',
    mark: 'computed',
    id: 'warm-up.lower-reference',
    unit: '1',
    value: 0.85,
  },
} as const satisfies Readonly<Record<string, WarmUpEntry>>;
