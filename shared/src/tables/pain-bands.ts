import type { Entry } from '../entry.ts';

/** A span of pain while something is done, as one model of going on with pain reads it. */
export interface PainBand extends Entry {
  readonly code: 'little' | 'borne' | 'too-much';
  /** the highest pain of the span, of 10; the next one begins above it */
  readonly most: number;
}

const model = {
  version: '1',
  unit: '1',
  source:
    'pain-monitoring model of Thomeé 1997 and Silbernagel 2007 Am J Sports Med 35:897; others print 3 in place of 2',
  mark: 'second-hand',
} as const;

/** Pain while something is done, of 10: up to 2, up to 5, and over it. Words for a number, and no limit of their own. */
export const PAIN_BANDS: readonly PainBand[] = [
  { ...model, id: 'pain-band.little', code: 'little', most: 2 },
  { ...model, id: 'pain-band.borne', code: 'borne', most: 5 },
  { ...model, id: 'pain-band.too-much', code: 'too-much', most: 10 },
];
