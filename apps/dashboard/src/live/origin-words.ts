import type { SetChoice } from '@surae/casebook';
import { HAND_WORDS, LIVE_WORDS, READY_WORDS, type Sentence } from '@surae/shared';

/** Where a set of heel raises can come from, in the order in which it is asked. */
export const setOrigins = [
  'live',
  'by-hand',
  'simulated',
  'replayed',
] as const satisfies readonly SetChoice['origin'][];

/** What each is called before a set. */
export const setOriginWords: Readonly<Record<SetChoice['origin'], Sentence>> = {
  live: LIVE_WORDS.live,
  'by-hand': HAND_WORDS.source,
  simulated: READY_WORDS.simulated,
  replayed: READY_WORDS.replayed,
};
