import type { LegCourse, Side, SinceVisit, VisitChange } from '@surae/analysis';
import type { LegOfVisit, LegPast } from '@surae/casebook';
import { LEGS_WORDS } from '@surae/shared';
import { amountWords, capital, type ValueWords } from '../result/value-words.ts';
import { dayOf } from '../words/dates.ts';
import { fixed } from '../words/decimal.ts';
import { fill } from '../words/fill.ts';

/** How far back a line of visits goes [d]. Ours: the twelve weeks of a usual programme. */
const shownDays = 84;

/** One visit on a line. */
export interface LinePoint {
  readonly day: number;
  /** the time as it was written */
  readonly at: string;
  readonly value: number;
}

/** One leg over its visits, and what of it could be chance. */
export interface ChanceLine {
  readonly side: Side;
  readonly points: readonly LinePoint[];
  /** around the value of the visit that the change is told from */
  readonly band: { readonly fromDay: number; readonly low: number; readonly high: number };
}

/** One leg over all its visits, with or without a line. */
export interface WholeLine extends Pick<ChanceLine, 'side' | 'points'> {
  /** null where no change is told */
  readonly band: ChanceLine['band'] | null;
  /** tests that no line joins to the others; left out where they are not shown */
  readonly apart?: readonly LinePoint[];
}

const cautions = ['first-retest', 'baseline-in-flare'] as const;

/** What is told of a change: since when, and whether it is more than chance. */
export interface ChangeTold {
  /** time of the earlier visit, as it was written */
  readonly since: string;
  readonly zone: 'likely-real' | 'possible' | 'cannot-tell' | 'open';
  /** later less earlier; 0 where it cannot be told */
  readonly difference: number;
  /** another study of the test would say otherwise */
  readonly hangs: boolean;
  /** what makes the change less sure */
  readonly cautions: readonly (typeof cautions)[number][];
}

/** How one leg moved since an earlier visit: in words, and as a line where there is something to draw. */
export interface LegChange {
  /** null where there is no change to tell of */
  readonly told: ChangeTold | null;
  readonly sentences: readonly string[];
  readonly line: ChanceLine | null;
}

type Past<Leg> = Pick<LegPast<Leg>, 'now' | 'alike' | 'unlike' | 'beforeStart' | 'course'>;

/** An earlier visit and what the comparison says of the change since it. */
interface Since {
  readonly visit: LegOfVisit<unknown>;
  readonly change: SinceVisit;
}

function isShown({ day }: { readonly day: number | null }, now: LegOfVisit<unknown>): boolean {
  return day !== null && now.result.day !== null && now.result.day - day <= shownDays;
}

/** The change since the first visit that is near enough to be drawn, or since the start; else since the visit before. */
function sinceOf(course: LegCourse, { alike, now }: Past<unknown>, fromStart: boolean): Since | null {
  const [first, before] = [alike[0], alike.at(-1)];
  const changeSince = (which: SinceVisit['since']): SinceVisit | undefined =>
    course.changes.find(({ since }) => since === which);
  const since = (visit: Since['visit'] | undefined, change: SinceVisit | undefined): Since | null =>
    visit === undefined || change === undefined ? null : { visit, change };
  const sinceFirst = since(first, changeSince('first-visit'));
  const isWanted = sinceFirst !== null && (fromStart || isShown(sinceFirst.visit.result, now));
  return isWanted ? sinceFirst : since(before, changeSince('visit-before'));
}

function toldOf({ visit, change: { outcome, hangsOnReliability } }: Since): ChangeTold {
  const since = visit.visit.begunAt;
  if (outcome.kind === 'side-by-side') return { since, zone: 'open', difference: 0, hangs: false, cautions: [] };
  const { change, detectable } = outcome;
  const difference = change.value;
  const hangs = hangsOnReliability === true;
  const lessSure = cautions.filter((caution) => outcome.cautions.includes(caution));
  return { since, zone: detectable.zone, difference, hangs, cautions: lessSure };
}

/** A change in words for the one whose leg it is. */
export function changeSentences(
  side: Side,
  { since, zone, difference, hangs, cautions: lessSure }: ChangeTold,
  words: ValueWords,
): readonly string[] {
  const told = { leg: capital(LEGS_WORDS[side].text), day: dayOf(since) };
  if (zone === 'open') return [fill(LEGS_WORDS['change-open'], told)];
  const isEqual = Number(fixed(difference, words.decimals)) === 0;
  const change = isEqual
    ? fill(LEGS_WORDS['change-equal'], told)
    : fill(LEGS_WORDS[`change-${zone}`], { ...told, difference: amountWords(difference, words) });
  return [
    hangs ? `${change} ${LEGS_WORDS.hangs.text}` : change,
    ...lessSure.map((caution) => LEGS_WORDS[caution].text),
  ];
}

/** Values that cannot be told from this one: by a difference, or by a factor where the error is one of the logarithm. */
function chanceAround(
  value: number,
  { detectable, ratio }: VisitChange,
): { readonly low: number; readonly high: number } {
  const { at95 } = detectable;
  return ratio === null
    ? { low: Math.max(0, value - at95), high: value + at95 }
    : { low: value * Math.exp(-at95), high: value * Math.exp(at95) };
}

function pointsOf(visits: readonly LegOfVisit<unknown>[]): readonly LinePoint[] {
  return visits.flatMap(({ visit: { begunAt }, result }): LinePoint[] =>
    result.day === null || result.value === null ? [] : [{ day: result.day, at: begunAt, value: result.value }],
  );
}

/**
 * A leg over all its visits: those that were done alike on one line, with what could be chance since the first of them, and
 * the others apart from it.
 */
export function wholeLine(side: Side, past: Past<unknown>): WholeLine {
  const { now, alike, beforeStart, course } = past;
  const unlike = [...beforeStart, ...past.unlike];
  // a test that is not interpreted is held against none: then nothing is joined
  const isJoined = now.result.blocks.length === 0;
  const since = course === null ? null : sinceOf(course, past, true);
  const from = since?.visit.result;
  const change = since?.change.outcome;
  const band =
    from == null || from.day === null || from.value === null || change?.kind !== 'change'
      ? null
      : { fromDay: from.day, ...chanceAround(from.value, change) };
  const [points, apart] = isJoined ? [[...alike, now], unlike] : [[], [...alike, ...unlike, now]];
  // a result in another unit has no place on this axis
  const onAxis = apart.filter(({ result }) => result.unit === now.result.unit);
  return { side, points: pointsOf(points), band, apart: pointsOf(onAxis) };
}

function lineOf(side: Side, { alike, now }: Past<unknown>, { visit, change }: Since): ChanceLine | null {
  const points = pointsOf([...alike, now].filter(({ result }) => isShown(result, now)));
  const [first] = points;
  const { day, value } = visit.result;
  if (first === undefined || points.length < 2 || day === null || value === null) return null;
  if (change.outcome.kind === 'side-by-side') return null;
  return { side, points, band: { fromDay: Math.max(day, first.day), ...chanceAround(value, change.outcome) } };
}

/** Why there is no change to tell of: this test shows something else than the earlier ones, or there is none. */
function uncomparedSentences(side: Side, { now, alike, unlike }: Past<unknown>, fromStart: boolean): readonly string[] {
  const leg = capital(LEGS_WORDS[side].text);
  if (alike.length > 0 && now.result.blocks.length > 0) return [fill(LEGS_WORDS['not-now'], { leg })];
  return alike.length + unlike.length === 0 && fromStart ? [fill(LEGS_WORDS['first-time'], { leg })] : [];
}

/**
 * How one leg moved over visits that were done alike, by the change that the result page tells. Visits that were done in
 * another way are on no line.
 *
 * @param fromStart - tell it from the first visit, however long ago, because the other leg is sore too
 */
export function legChange(side: Side, past: Past<unknown>, words: ValueWords, fromStart: boolean): LegChange {
  const { unlike, course } = past;
  const apart = unlike.length > 0 ? [LEGS_WORDS.unlike.text] : [];
  const since = course === null ? null : sinceOf(course, past, fromStart);
  if (since === null) {
    return { sentences: [...uncomparedSentences(side, past, fromStart), ...apart], told: null, line: null };
  }
  const told = toldOf(since);
  const sentences = [...changeSentences(side, told, words), ...apart];
  return { sentences, told, line: lineOf(side, past, since) };
}
