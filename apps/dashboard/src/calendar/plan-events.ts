import type { Handout, HandoutLine } from '@surae/exchange';
import { CALENDAR_LIMITS, CALENDAR_WORDS } from '@surae/shared';
import { planLegs, planName, planPieces, runWords } from '../plan/plan-words.ts';
import { capital } from '../result/value-words.ts';
import { fill } from '../words/fill.ts';
import { type Rhythm, rhythmOf } from './plan-rhythm.ts';

/** An event that comes again, on whole days by the calendar of wherever somebody is. */
export interface PlanEvent {
  /** the same for the same place of every plan of a person, so that a newer one takes its place */
  readonly uid: string;
  readonly title: string;
  readonly text: string;
  /** first and last day on which it is */
  readonly first: string;
  readonly last: string;
  readonly rhythm: Rhythm;
}

/** A plan for a calendar. */
export interface PlanCalendar {
  readonly events: readonly PlanEvent[];
  /** uids of places that an earlier file filled and this one does not */
  readonly gone: readonly string[];
  /** rises from one plan to the next: days since the beginning of 2020 */
  readonly sequence: number;
  /** lines that are in no event */
  readonly leftOut: readonly HandoutLine[];
  /** whether a line has no end of its own */
  readonly isOpen: boolean;
}

const DAY_MS = 86_400_000;
const EVERY_DAY: Rhythm = { weeks: 1, places: [0, 1, 2, 3, 4, 5, 6] };

function numberOf(day: string): number {
  return Math.round(Date.parse(`${day}T00:00:00Z`) / DAY_MS);
}

function dayOfNumber(number: number): string {
  return new Date(number * DAY_MS).toISOString().slice(0, 10);
}

/** Whether a rhythm that began on a day falls on another. */
export function isOn({ weeks, places }: Rhythm, begun: string, day: string): boolean {
  const length = 7 * weeks;
  const place = (((numberOf(day) - numberOf(begun)) % length) + length) % length;
  return places.includes(place);
}

/** First and last day of a rhythm between two days; undefined where it falls on none. */
function ends(
  rhythm: Rhythm,
  begun: string,
  from: string,
  until: string,
): Pick<PlanEvent, 'first' | 'last'> | undefined {
  const [low, high] = [numberOf(from), numberOf(until)];
  const most = 7 * rhythm.weeks;
  const steps = Array.from({ length: Math.max(0, Math.min(most, high - low + 1)) }, (_, k) => k);
  const first = steps.map((k) => dayOfNumber(low + k)).find((day) => isOn(rhythm, begun, day));
  const last = steps.map((k) => dayOfNumber(high - k)).find((day) => isOn(rhythm, begun, day));
  return first === undefined || last === undefined ? undefined : { first, last };
}

function titleOf(line: HandoutLine): string {
  const what = planName(line);
  if (line.of === 'running') return fill(CALENDAR_WORDS['run-title'], { what, most: runWords(line)[0] ?? '' });
  return fill(CALENDAR_WORDS.title, { what, legs: planLegs(line) });
}

/**
 * The days of a plan from a day on, as events of a calendar. Only what stands in the plan that was taken home is there: what was held
 * back at the visit, and everything where the safety list keeps from loading, is in no plan and so in no event.
 *
 * @param handout - what was taken home [-]
 * @param today - first day that an event may be on [-]
 * @param before - places of earlier plans that a file may have filled [-]
 * @returns events, and what is taken away
 * Source: ours
 */
export function planCalendar(handout: Handout, today: string, before: number): PlanCalendar {
  const { day, plan, series } = handout;
  const uidOf = (place: number | 'morning'): string => `surae-${series}-${place}`;
  const start = today > day ? today : day;
  const horizon = dayOfNumber(numberOf(start) + CALENDAR_LIMITS.openDays.value - 1);
  const planned = plan.map((line, place): PlanEvent | undefined => {
    const rhythm = rhythmOf(line, plan);
    if (rhythm === null) return undefined;
    const between = ends(rhythm, day, line.from > start ? line.from : start, line.until ?? horizon);
    if (between === undefined) return undefined;
    const text = `${capital(planPieces({ ...line, until: null }).join(', '))}. ${CALENDAR_WORDS.care.text}`;
    return { uid: uidOf(place), title: titleOf(line), text, ...between, rhythm };
  });
  const loading = planned.filter((one) => one !== undefined);
  const last = loading.map((one) => one.last).reduce((a, b) => (a > b ? a : b), loading.length === 0 ? horizon : start);
  const morning: PlanEvent = {
    uid: uidOf('morning'),
    title: CALENDAR_WORDS.morning.text,
    text: CALENDAR_WORDS['morning-how'].text,
    first: start,
    last,
    rhythm: EVERY_DAY,
  };
  return {
    events: [morning, ...loading],
    gone: Array.from({ length: before }, (_, place) => place).flatMap((place) =>
      planned[place] === undefined ? [uidOf(place)] : [],
    ),
    sequence: Math.max(0, numberOf(day) - numberOf('2020-01-01')),
    leftOut: plan.filter((line) => rhythmOf(line) === null),
    isOpen: plan.some((line) => line.until === null && rhythmOf(line) !== null),
  };
}
