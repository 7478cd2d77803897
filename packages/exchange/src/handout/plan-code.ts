import { EXERCISES, PLAN_ADVICE_CHOICES, RUN_WHY_CHOICES } from '@surae/shared';
import { ExchangeError } from '../errors.ts';
import type { CodeReader, CodeWriter } from './code-bytes.ts';
import { dayOf, daysOf } from './code-day.ts';

const kinds = ['exercise', 'running', 'advice', 'words'] as const;
const sides = ['left', 'right', 'both'] as const;
const exercises = EXERCISES.map(({ code }) => code);
const advice = Object.keys(PLAN_ADVICE_CHOICES);
const whys = Object.keys(RUN_WHY_CHOICES);

/** A line of a plan as somebody takes it home; null is left open. Seconds, metres and degrees are whole numbers. */
export interface HandoutLine {
  readonly of: (typeof kinds)[number];
  /** of an exercise or of advice, from the shared lists; null for runs and words */
  readonly code: string | null;
  /** words of a line that is of no list; empty where a code says it */
  readonly what: string;
  readonly side: (typeof sides)[number];
  /** first and last day on which it holds */
  readonly from: string;
  readonly until: string | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly holdS: number | null;
  readonly tempo: { readonly upS: number | null; readonly topS: number | null; readonly downS: number | null } | null;
  readonly restS: number | null;
  /** to a tenth */
  readonly load: { readonly value: number; readonly unit: string } | null;
  readonly lowestFootDeg: number | null;
  readonly painLimit: number | null;
  /** to a tenth */
  readonly perWeek: number | null;
  readonly run: {
    readonly mostS: number | null;
    readonly mostM: number | null;
    readonly daysBetween: number | null;
    readonly runS: number | null;
    readonly walkS: number | null;
  } | null;
  /** code of why runs have their limit; null where nobody said so, or in words of their own */
  readonly why: string | null;
}

/** A line of words alone, as codes of version 1 hold them. */
export function wordsHome(what: string, side: HandoutLine['side'], from: string): HandoutLine {
  return {
    of: 'words',
    code: null,
    what,
    side,
    from,
    until: null,
    sets: null,
    repetitions: null,
    holdS: null,
    tempo: null,
    restS: null,
    load: null,
    lowestFootDeg: null,
    painLimit: null,
    perWeek: null,
    run: null,
    why: null,
  };
}

/** The list of a kind whose places codes count. */
function listOf(of: HandoutLine['of']): readonly string[] {
  return of === 'exercise' ? exercises : advice;
}

/** Whether a line can be told by a code: a list that a newer version made longer is told by its words. */
export function isListed({ of, code }: Pick<HandoutLine, 'of' | 'code'>): boolean {
  return code !== null && (of === 'exercise' || of === 'advice') && listOf(of).includes(code);
}

function tenths(value: number | null): number | null {
  return value === null ? null : Math.round(10 * value);
}

function writeDose(writer: CodeWriter, line: HandoutLine): void {
  const { tempo, load, lowestFootDeg } = line;
  writer
    .maybe(line.sets)
    .maybe(line.repetitions)
    .maybe(line.holdS)
    .number(tempo === null ? 0 : 1);
  if (tempo !== null) writer.maybe(tempo.upS).maybe(tempo.topS).maybe(tempo.downS);
  writer.maybe(line.restS).number(load === null ? 0 : load.unit === 'kg' ? 1 : 2);
  if (load !== null) writer.number(Math.round(10 * load.value));
  if (load !== null && load.unit !== 'kg') writer.text(load.unit);
  writer.maybe(lowestFootDeg === null ? null : lowestFootDeg + 90).maybe(tenths(line.perWeek));
}

/**
 * Writes one line: its kind, leg, first day and last day after it, pain limit, then of an exercise its place on the list and the dose,
 * of runs the limit and why, of advice its place, of words the text.
 */
export function writeLine(writer: CodeWriter, line: HandoutLine): void {
  const { of, code, side, from, until, painLimit, run } = line;
  writer.number(kinds.indexOf(of)).number(sides.indexOf(side)).number(daysOf(from));
  writer.maybe(until === null ? null : Math.max(0, daysOf(until) - daysOf(from))).maybe(painLimit);
  if (of === 'exercise' || of === 'advice') writer.number(listOf(of).indexOf(code ?? ''));
  if (of === 'words') writer.text(line.what);
  if (of === 'exercise' || of === 'words') writeDose(writer, line);
  if (run !== null) {
    writer.maybe(run.mostS).maybe(run.mostM).maybe(run.daysBetween).maybe(run.runS).maybe(run.walkS);
    writer.maybe(line.why === null ? null : whys.indexOf(line.why));
  }
}

function placed(list: readonly string[], place: number): string {
  const found = list[place];
  if (found === undefined) {
    throw new ExchangeError('newer-version', {
      file: 'code',
      expected: `a place below ${list.length}`,
      actual: `${place}`,
    });
  }
  return found;
}

function within(value: number | null, most: number): number | null {
  if (value !== null && value > most) {
    throw new ExchangeError('bad-file', { file: 'code', expected: `at most ${most}`, actual: String(value) });
  }
  return value;
}

function readDose(reader: CodeReader): Partial<HandoutLine> {
  const counts = { sets: reader.maybe(), repetitions: reader.maybe(), holdS: reader.maybe() };
  const tempo = reader.number() === 0 ? null : { upS: reader.maybe(), topS: reader.maybe(), downS: reader.maybe() };
  const restS = reader.maybe();
  const unit = reader.number();
  const value = unit === 0 ? 0 : reader.number() / 10;
  const load = unit === 0 ? null : { value, unit: unit === 1 ? 'kg' : reader.text() };
  const lowest = within(reader.maybe(), 180);
  const perWeek = reader.maybe();
  return {
    ...counts,
    tempo,
    restS,
    load,
    lowestFootDeg: lowest === null ? null : lowest - 90,
    perWeek: perWeek === null ? null : perWeek / 10,
  };
}

/** Reads what {@link writeLine} wrote; a place on a list that is not known here is of a newer version. */
export function readLine(reader: CodeReader): HandoutLine {
  const of = reader.oneOf(kinds);
  const side = reader.oneOf(sides);
  const days = reader.number();
  const length = reader.maybe();
  const painLimit = within(reader.maybe(), 10);
  const until = length === null ? null : dayOf(days + length);
  const code = of === 'exercise' || of === 'advice' ? placed(listOf(of), reader.number()) : null;
  const what = of === 'words' ? reader.text() : '';
  const empty = { ...wordsHome(what, side, dayOf(days)), of, code, until, painLimit };
  if (of === 'exercise' || of === 'words') return { ...empty, ...readDose(reader) };
  if (of === 'advice') return empty;
  const run = {
    mostS: reader.maybe(),
    mostM: reader.maybe(),
    daysBetween: reader.maybe(),
    runS: reader.maybe(),
    walkS: reader.maybe(),
  };
  const why = reader.maybe();
  return { ...empty, run, why: why === null ? null : placed(whys, why) };
}
