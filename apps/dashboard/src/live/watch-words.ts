import { HELD_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { SensorWatch, WatchState } from './sensor-watch.ts';

/** How it stands with a watched sensor, in one sentence. */
export function watchWords(state: WatchState, back: SensorWatch['back'], reasonOf: (error: Error) => string): string {
  switch (state.kind) {
    case 'waiting':
      return HELD_WORDS.waiting.text;
    case 'silent':
      return fill(HELD_WORDS.silent, { seconds: Math.floor(state.forS) });
    case 'unread':
      return HELD_WORDS.unread.text;
    case 'seeking':
      return state.attempt === 0 ? HELD_WORDS.lost.text : fill(HELD_WORDS.trying, { attempt: state.attempt });
    case 'over':
      return fill(HELD_WORDS.over, { reason: reasonOf(state.error) });
    case 'streaming': {
      if (back === undefined) return HELD_WORDS.streaming.text;
      const seconds = back.afterS.toFixed(1);
      return back.lostCount === null
        ? fill(HELD_WORDS['back-untold'], { seconds })
        : fill(HELD_WORDS.back, { seconds, lost: back.lostCount });
    }
    default:
      return state satisfies never;
  }
}
