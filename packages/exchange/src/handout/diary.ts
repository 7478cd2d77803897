import { EXERCISES } from '@surae/shared';
import { ExchangeError } from '../errors.ts';
import { utf8 } from '../utf8.ts';
import type { CodeReader, CodeWriter } from './code-bytes.ts';
import { dayOf, daysOf } from './code-day.ts';
import { begunCode, type Morning, openedCodeOf, readMorning, writeMorning } from './handout.ts';
import { checkNumber, sealedCode } from './sealed-code.ts';

const sides = ['left', 'right', 'both'] as const;
const exercises = EXERCISES.map(({ code }) => code);

/** What was done of one exercise on a day. */
export interface DoneAtHome {
  /** by the calendar of the place where it was told */
  readonly day: string;
  /** of the plan that it is of, see {@link planKey}, and the place of its line there */
  readonly planKey: number;
  readonly place: number;
  /** code of the exercise, for whom the plan is not at hand */
  readonly code: string;
  readonly side: (typeof sides)[number];
  readonly sets: number;
  /** worst pain in it, 0 to 10; null was not told */
  readonly pain: number | null;
}

/** The worst pain of each leg in the hours after the exercises of a day, up to the night; null was not told. */
export interface AfterAtHome {
  readonly day: string;
  readonly left: number | null;
  readonly right: number | null;
}

/** A run on a day: by time or by way, and the worst pain of each leg in it; null was not told. */
export interface RunAtHome {
  readonly day: string;
  /** whole seconds and metres */
  readonly durationS: number | null;
  readonly distanceM: number | null;
  /** steps a minute of both feet, where a file told them; null in codes before version 2 [1/min] */
  readonly cadencePerMin: number | null;
  readonly left: number | null;
  readonly right: number | null;
}

/** What somebody wrote down at home. */
export interface Diary {
  readonly mornings: readonly Morning[];
  readonly done: readonly DoneAtHome[];
  readonly runs: readonly RunAtHome[];
  /** one of a day; none in codes of version 1 */
  readonly after: readonly AfterAtHome[];
}

/** A short number of the plan that these documents are: what is done at home names it, and no id leaves. */
export function planKey(ids: readonly string[]): number {
  return ids.length === 0 ? 0 : checkNumber(utf8(ids.join(' ')));
}

/** A short number of a person: many have the same, and nobody can be found by it. */
export function seriesKey(personId: string): number {
  return checkNumber(utf8(personId));
}

function writeDone(writer: CodeWriter, { day, planKey: key, place, code, side, sets, pain }: DoneAtHome): void {
  writer.number(daysOf(day)).number(key).number(place).number(exercises.indexOf(code)).number(sides.indexOf(side));
  writer.number(sets).maybe(pain);
}

function readDone(reader: CodeReader): DoneAtHome {
  const [day, key, place] = [dayOf(reader.number()), reader.number(), reader.number()];
  const code = reader.oneOf(exercises);
  return {
    day,
    planKey: key,
    place,
    code,
    side: reader.oneOf(sides),
    sets: reader.number(),
    pain: painOf(reader.maybe()),
  };
}

function writeRun(writer: CodeWriter, { day, durationS, distanceM, cadencePerMin, left, right }: RunAtHome): void {
  writer.number(daysOf(day)).maybe(durationS).maybe(distanceM).maybe(left).maybe(right).maybe(cadencePerMin);
}

function readRun(reader: CodeReader, version: number): RunAtHome {
  const day = dayOf(reader.number());
  const [durationS, distanceM] = [reader.maybe(), reader.maybe()];
  const [left, right] = [painOf(reader.maybe()), painOf(reader.maybe())];
  return { day, durationS, distanceM, cadencePerMin: version < 2 ? null : reader.maybe(), left, right };
}

function writeAfter(writer: CodeWriter, { day, left, right }: AfterAtHome): void {
  // both legs in one number: eleven answers of each, and none
  writer.number(daysOf(day)).number(12 * (left === null ? 0 : left + 1) + (right === null ? 0 : right + 1));
}

function readAfter(reader: CodeReader): AfterAtHome {
  const day = dayOf(reader.number());
  const both = reader.number();
  const [left, right] = [Math.floor(both / 12), both % 12];
  return { day, left: painOf(left === 0 ? null : left - 1), right: right === 0 ? null : right - 1 };
}

function painOf(value: number | null): number | null {
  if (value !== null && value > 10) {
    throw new ExchangeError('bad-file', { file: 'code', expected: 'pain of 0 to 10', actual: String(value) });
  }
  return value;
}

/**
 * What somebody wrote down at home as a text that can be given back: kind 3, version 2, then mornings, what was done of
 * exercises, runs, and pain after the exercises of a day, in the way of `handoutCode`. Steps a minute and pain after exercises
 * came with version 2.
 */
export function diaryCode({ mornings, done, runs, after }: Diary): string {
  const writer = begunCode('diary');
  writer.list(mornings, (one) => writeMorning(writer, one));
  writer.list(done, (one) => writeDone(writer, one));
  writer.list(runs, (one) => writeRun(writer, one));
  writer.list(after, (one) => writeAfter(writer, one));
  return sealedCode(writer.written());
}

/**
 * What such a text holds; one of mornings alone, as pages before gave it, is read too.
 *
 * @throws {@link ExchangeError} `bad-file` for a damaged or another text, or pain beyond 10; `newer-version` for a later version
 */
export function diaryOfCode(text: string): Diary {
  const { reader, kind, version } = openedCodeOf(text, ['diary', 'mornings']);
  const mornings = reader.list(() => readMorning(reader));
  const isWhole = kind === 'diary';
  const done = isWhole ? reader.list(() => readDone(reader)) : [];
  const runs = isWhole ? reader.list(() => readRun(reader, version)) : [];
  const after = isWhole && version > 1 ? reader.list(() => readAfter(reader)) : [];
  reader.end();
  return { mornings, done, runs, after };
}
