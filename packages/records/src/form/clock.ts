import { type DateOrder, type DayReading, dayReadings } from './date-order.ts';

/** What a clock text tells: the time of day, the date with it, or an instant, whose place on earth is told too. */
export type ClockKind = 'time-of-day' | 'date-time' | 'instant';

/** A reading of a clock. */
export interface ClockReading {
  readonly kind: ClockKind;
  /** since midnight, since 1970 on the clock of the place, or since 1970 in UTC [s] */
  readonly seconds: number;
}

const DAY_S = 86_400;
const HOUR_S = 3_600;

const clock =
  /^(?:(\d{1,4})([-/.])(\d\d?)\2(\d{1,4}),?[T ]\s*)?(\d\d?):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?\s*(?:([ap])\.?m\.?)?\s*(Z|[+-]\d\d(?::?\d\d)?)?$/i;

/** A text of a clock in its parts. */
interface ClockText {
  /** every day that it may mean; null without a date */
  readonly days: readonly DayReading[] | null;
  /** since midnight [s] */
  readonly ofDay: number;
  readonly zone: string | undefined;
}

/** The hour of a day, where `half` says which half of it the clock shows; undefined where there is no such hour. */
function hourOf(hour: number, half: string | undefined): number | undefined {
  if (half === undefined) return hour <= 23 ? hour : undefined;
  if (hour < 1 || hour > 12) return undefined;
  return (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
}

function clockText(field: string): ClockText | undefined {
  const found = clock.exec(field.trim());
  if (found === null) return undefined;
  const [, first, mark, second, third, hour, minute, seconds, fraction, half, zone] = found;
  const h = hourOf(Number(hour), half);
  const [m, s] = [Number(minute), Number(seconds)];
  if (h === undefined || m > 59 || seconds === undefined || s > 59) return undefined;
  const ofDay = h * HOUR_S + m * 60 + s + (fraction === undefined ? 0 : Number(`0.${fraction}`));
  return { days: first === undefined ? null : dayReadings(first, mark!, second!, third!), ofDay, zone };
}

/**
 * The reading of a clock that a field holds: `13:05:01.25`, `1:05:01.25 PM`, `2026-03-29 13:05:01,25`, `29.3.2026 13:05:01` (day,
 * month, year), `3/29/26 1:05:01 PM` or `2026-03-29T13:05:01.25+02:00`. Anything else, such as an hour of 25 or the 30th of
 * February, is undefined.
 *
 * @param dates - the order of a date that can be read in several; such a date is none where it is null
 */
export function clockReading(field: string, dates: DateOrder | null = null): ClockReading | undefined {
  const text = clockText(field);
  if (text === undefined) return undefined;
  const { days, ofDay, zone } = text;
  if (days === null) return zone === undefined ? { kind: 'time-of-day', seconds: ofDay } : undefined;
  const day = days.find(({ order }) => order === null || order === dates);
  if (day === undefined) return undefined;
  const local = day.days * DAY_S + ofDay;
  return zone === undefined
    ? { kind: 'date-time', seconds: local }
    : { kind: 'instant', seconds: local - zoneSeconds(zone) };
}

/** The orders in which a field is a day with a time, where it hangs on the order; else undefined. */
export function dateOrdersOf(field: string): readonly DateOrder[] | undefined {
  const orders = clockText(field)?.days?.flatMap(({ order }) => order ?? []) ?? [];
  return orders.length === 0 ? undefined : orders;
}

function zoneSeconds(zone: string): number {
  if (zone.toUpperCase() === 'Z') return 0;
  const sign = zone.startsWith('-') ? -1 : 1;
  const digits = zone.slice(1).replace(':', '').padEnd(4, '0');
  return sign * (Number(digits.slice(0, 2)) * HOUR_S + Number(digits.slice(2)) * 60);
}

/** Where a clock did not go on as time did. */
export interface ClockChange {
  /** index of the first time after it */
  readonly index: number;
  readonly kind: /** the time of day began anew */
    | 'midnight'
    /** the clock was put forward by an hour, as at the beginning of summer time */
    | 'hour-forward'
    /** the clock was put back by an hour, as at its end */
    | 'hour-back';
}

/** A clock as a steady time. */
export interface SteadyClock {
  /** since the midnight before the first reading [s] */
  readonly timesS: Float64Array;
  readonly changes: readonly ClockChange[];
}

/** How far from a whole hour a step may be to count as a change of the clock, in usual steps; ours. */
const CHANGE_STEPS = 5;
/** and never further than this [s] */
const MOST_SLACK_S = 30;

/**
 * Times that go on from the readings of a clock: past midnight a day is added, and an hour is added or taken where the clock
 * was changed by one. A step that is none of these is left as it is, also where it goes back.
 */
export function steadyClock(readings: Float64Array, kind: ClockKind): SteadyClock {
  const first = readings[0] ?? 0;
  const midnight = kind === 'time-of-day' ? 0 : Math.floor(first / DAY_S) * DAY_S;
  const changes: ClockChange[] = [];
  const timesS = new Float64Array(readings.length);
  if (readings.length > 0) timesS[0] = tidy(first - midnight);
  const slack = Math.min(MOST_SLACK_S, CHANGE_STEPS * usualStep(readings));
  let added = -midnight;
  for (let i = 1; i < readings.length; i += 1) {
    const step = readings[i]! - readings[i - 1]!;
    const near = (target: number): boolean => step - target > 0 && step - target <= slack;
    if (kind === 'time-of-day' && step < 0 && step + DAY_S < DAY_S / 2) {
      added += DAY_S;
      changes.push({ index: i, kind: 'midnight' });
    } else if (kind !== 'instant' && step < 0 && near(-HOUR_S)) {
      added += HOUR_S;
      changes.push({ index: i, kind: 'hour-back' });
    } else if (kind !== 'instant' && near(HOUR_S) && onTheHour(readings[i - 1]!, readings[i]!, slack)) {
      added -= HOUR_S;
      changes.push({ index: i, kind: 'hour-forward' });
    }
    timesS[i] = tidy(readings[i]! + added);
  }
  return { timesS, changes };
}

/** Clocks are put forward on the full hour; a pause of just an hour at another minute is a pause. */
function onTheHour(before: number, after: number, slack: number): boolean {
  const early = (HOUR_S - (before % HOUR_S)) % HOUR_S;
  return early <= slack && after % HOUR_S <= slack;
}

function usualStep(readings: Float64Array): number {
  const steps: number[] = [];
  for (let i = 1; i < readings.length && steps.length < 2000; i += 1) {
    const step = readings[i]! - readings[i - 1]!;
    if (step > 0) steps.push(step);
  }
  steps.sort((a, b) => a - b);
  return steps[steps.length >> 1] ?? 0;
}

/** A clock text has at most nine places; what a double adds beyond a ten-millionth of a second is left out. */
function tidy(seconds: number): number {
  return Math.round(seconds * 1e7) / 1e7;
}
