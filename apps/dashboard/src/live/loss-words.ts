import type { DeviceSummary } from '@surae/sensors';
import { HELD_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** A rate that is further from the one that was told is pointed out [-]. Common practice, no source. */
const rateTolerance = 0.02;

/** What was lost on the way, and how that is known. */
export function lossWords(summary: DeviceSummary): string {
  const { lossKnowledge, lostCount, receivedCount, placedBy } = summary;
  if (lostCount === null || lossKnowledge === 'cannot-tell') {
    return HELD_WORDS[placedBy === 'arrival' ? 'lost-open' : 'lost-early'].text;
  }
  const all = receivedCount + lostCount;
  if (lossKnowledge === 'estimated') return fill(HELD_WORDS['lost-estimated'], { lost: lostCount, all });
  return lostCount === 0
    ? fill(HELD_WORDS['lost-none'], { received: receivedCount })
    : fill(HELD_WORDS['lost-known'], { lost: lostCount, all });
}

/** The rate as it was measured, beside the one that was told; pointed out where they are apart. */
export function rateWords({ effectiveRateHz: rate, nominalRateHz: told }: DeviceSummary): {
  readonly text: string;
  readonly isOff: boolean;
} {
  if (rate === null) return { text: HELD_WORDS['rate-open'].text, isOff: false };
  const values = { rate: rate.toFixed(rate < 100 ? 1 : 0), told: told ?? '' };
  if (told === null) return { text: fill(HELD_WORDS['rate-only'], values), isOff: false };
  const isOff = Math.abs(rate - told) > rateTolerance * told;
  return { text: fill(HELD_WORDS[isOff ? 'rate-off' : 'rate-told'], values), isOff };
}
