import type { Entry } from '../entry.ts';

/** What an answer to "when was the last flare" says: at least so many days ago, and fewer than so many; null for no such bound [d]. */
export interface FlareTime extends Entry {
  readonly least: number;
  readonly under: number | null;
}

const ours = {
  version: '1',
  unit: 'd',
  source: 'ours: what somebody can tell without a diary',
  mark: 'computed',
} as const;

/** When the last flare of a leg was, by the code of the answer, the latest first. */
export const FLARE_TIMES = {
  now: { ...ours, id: 'flare.now', least: 0, under: 1 },
  'within-two-days': { ...ours, id: 'flare.within-two-days', least: 0, under: 3 },
  'within-a-week': { ...ours, id: 'flare.within-a-week', least: 0, under: 7 },
  'longer-ago-or-never': { ...ours, id: 'flare.longer-ago-or-never', least: 7, under: null },
} as const satisfies Readonly<Record<string, FlareTime>>;

/** Code of an answer. */
export type LastFlare = keyof typeof FLARE_TIMES;
