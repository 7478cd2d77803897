import { RUN_FILE_WORDS, type Sentence } from '@surae/shared';
import { dayOf } from '../words/dates.ts';
import { fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';
import type { RunRead } from './run-file.ts';
import type { RunFileError } from './run-file-error.ts';

/** By what a file is known that was taken in before. */
export interface TakenRunFile {
  readonly fileSha256: string;
  readonly day: string;
}

const words = RUN_FILE_WORDS;

function minutes(seconds: number): string {
  return fixed(seconds / 60, 1);
}

/** Steps a minute, and how they were counted. */
function cadenceLine({ cadence }: RunRead): readonly string[] {
  if (cadence === null) return [];
  const { counted, perMin, as } = cadence;
  const sentence = { 'one-foot': words['steps-one-foot'], both: words.steps, unclear: words['steps-unclear'] }[as];
  return [fill(sentence, { counted, steps: perMin ?? '' })];
}

/** What a file tells, and everything about it that is to be known before it is kept; what does not matter is not said. */
export function runFileLines(run: RunRead, today: string, taken: readonly TakenRunFile[]): readonly string[] {
  const before = taken.find(({ fileSha256 }) => fileSha256 === run.fileSha256);
  const counted = (sentence: Sentence, count: number): readonly string[] =>
    count === 0 ? [] : [fill(sentence, { count })];
  return [
    ...(before === undefined ? [] : [fill(words.twice, { day: dayOf(before.day) })]),
    fill(words.found, { day: dayOf(run.day) }),
    ...(run.day === today ? [] : [words['other-day'].text]),
    ...(run.dayBy === 'file' ? [] : [words['device-day'].text]),
    fill(words.times, { moving: minutes(run.movingS), whole: minutes(run.wholeS) }),
    fill(words.way, { way: fixed(run.distanceM / 1000, 2), error: fixed(run.distanceErrorM / 1000, 2) }),
    ...cadenceLine(run),
    ...counted(words.pauses, run.pauses),
    ...(run.gaps === 0 ? [] : [fill(words.gaps, { count: run.gaps, minutes: minutes(run.gapS) })]),
    ...counted(words.spikes, run.spikes),
    ...counted(words.untimed, run.untimed),
    ...counted(words.tracks, run.tracks === 1 ? 0 : run.tracks),
    ...(run.isFast ? [words.fast.text] : []),
    words.next.text,
  ];
}

/** Why a file is no run: what was expected, and what came. */
export function runFileRefusal({ code, got }: RunFileError): string {
  return fill(words[`refused-${code}`], { got });
}
