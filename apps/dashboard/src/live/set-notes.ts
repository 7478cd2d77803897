import type { FaultMark, SetChoice } from '@surae/casebook';
import type { Protocol } from '@surae/shared';
import { HAND_WORDS, LIVE_WORDS, SIGNAL_RULES, TEST_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { OffPlate } from './plate-watch.ts';
import { reachedLimit } from './set-limit.ts';
import type { SourceSeen } from './source-watch.ts';

/** What the screen knows of a set beside its count and height. */
export interface SetScene extends SourceSeen {
  readonly count: number;
  readonly timeS: number;
  /** whether the screen may go dark by itself */
  readonly maySleep: boolean;
  readonly pain: number | null;
  readonly prompts: number;
  /** why samples are not written; null when they are */
  readonly unsaved: string | null;
  readonly parameters: Protocol['parameters'];
}

/** Lines that need the eyes of the tester now, the most urgent first. */
export function setNotes(scene: SetScene): string[] {
  const { count, timeS, isFlat, isOffPlate, silentS, hasBegun, maySleep, pain, prompts, unsaved, link, parameters } =
    scene;
  const limit = parameters.painLimit.value;
  const reached = reachedLimit(count, timeS, parameters);
  return [
    ...(pain !== null && limit !== null && pain > limit ? [fill(TEST_WORDS['pain-over'], { limit })] : []),
    ...(unsaved === null ? [] : [fill(TEST_WORDS.unsaved, { reason: unsaved })]),
    ...(link === null ? [] : [link]),
    ...(hasBegun ? [] : [LIVE_WORDS.waiting.text]),
    ...(silentS === null ? [] : [fill(LIVE_WORDS.silent, { seconds: silentS, ends: SIGNAL_RULES.silentEnds.value })]),
    ...(isOffPlate ? [TEST_WORDS['off-plate'].text] : []),
    ...(isFlat ? [TEST_WORDS.flat.text] : []),
    ...(reached === undefined ? [] : [TEST_WORDS[`limit-${reached}`].text]),
    ...(prompts >= 2 ? [TEST_WORDS['prompts-over'].text] : []),
    ...(maySleep ? [TEST_WORDS['may-sleep'].text] : []),
  ];
}

/** That the page was hidden in a set, and is kept with it. */
export function hiddenWords(origin: SetChoice['origin'], atS: number, seconds: number): string {
  const words = { live: LIVE_WORDS.hidden, 'by-hand': HAND_WORDS.hidden };
  const said = origin === 'live' || origin === 'by-hand' ? words[origin] : TEST_WORDS.hidden;
  return fill(said, { time: Math.max(0, atS).toFixed(0), seconds: seconds.toFixed(0) });
}

/** That nobody stood on the plate for a while, and it is kept with the set. */
export function offPlateWords({ fromS, forS }: OffPlate): string {
  return fill(TEST_WORDS['off-plate-kept'], { time: fromS.toFixed(0), seconds: forS.toFixed(1) });
}

/** That a fault was marked by hand, and is kept with the set. */
export function markedWords({ atS, criterion }: FaultMark): string {
  const fault = TEST_WORDS[criterion as 'knee' | 'lean' | 'hands' | 'other-foot'].text;
  return fill(TEST_WORDS.marked, { time: atS.toFixed(1), fault });
}
