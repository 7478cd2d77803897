import type { Protocol } from '@surae/shared';
import { LIVE_WORDS, TEST_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
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
  const { count, timeS, isFlat, silentS, hasBegun, maySleep, pain, prompts, unsaved, link, parameters } = scene;
  const limit = parameters.painLimit.value;
  const reached = reachedLimit(count, timeS, parameters);
  return [
    ...(pain !== null && limit !== null && pain > limit ? [fill(TEST_WORDS['pain-over'], { limit })] : []),
    ...(unsaved === null ? [] : [fill(TEST_WORDS.unsaved, { reason: unsaved })]),
    ...(link === null ? [] : [link]),
    ...(hasBegun ? [] : [LIVE_WORDS.waiting.text]),
    ...(silentS === null ? [] : [fill(LIVE_WORDS.silent, { seconds: silentS })]),
    ...(isFlat ? [TEST_WORDS.flat.text] : []),
    ...(reached === undefined ? [] : [TEST_WORDS[`limit-${reached}`].text]),
    ...(prompts >= 2 ? [TEST_WORDS['prompts-over'].text] : []),
    ...(maySleep ? [TEST_WORDS['may-sleep'].text] : []),
  ];
}
