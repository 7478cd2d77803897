import type { PullProtocol } from '@surae/shared';

/** What the person is told to do. */
export type PullCue = 'relax' | 'push' | 'hold' | 'off' | 'over';

/** When each stretch of a trial begins, from its first sample [s]. */
export interface CueTimes {
  readonly pushS: number;
  readonly holdS: number;
  readonly offS: number;
  readonly overS: number;
}

/** Rest recorded after the push, so that the load at rest is known on both sides of it [s]; ours. */
const afterS = 2.5;

/** The stretches of a trial by its protocol; a parameter without a value takes no time. */
export function cueTimes({ stillBefore, rampTime, hold }: PullProtocol['parameters']): CueTimes {
  const pushS = stillBefore.value ?? 0;
  const holdS = pushS + (rampTime.value ?? 0);
  const offS = holdS + (hold.value ?? 0);
  return { pushS, holdS, offS, overS: offS + afterS };
}

/** The cue at a time, and how long it still holds [s]. */
export function cueAt(timeS: number, times: CueTimes): { readonly cue: PullCue; readonly leftS: number } {
  const { pushS, holdS, offS, overS } = times;
  if (timeS < pushS) return { cue: 'relax', leftS: pushS - timeS };
  if (timeS < holdS) return { cue: 'push', leftS: holdS - timeS };
  if (timeS < offS) return { cue: 'hold', leftS: offS - timeS };
  return timeS < overS ? { cue: 'off', leftS: overS - timeS } : { cue: 'over', leftS: 0 };
}
