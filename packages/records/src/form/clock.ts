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
  /^(?:(\d{4})-(\d\d?)-(\d\d?)[T ]\s*|(\d\d?)\.(\d\d?)\.(\d{4}),?[T ]\s*)?(\d\d?):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?\s*(Z|[+-]\d\d(?::?\d\d)?)?$/;

/** Days since 1970-01-01 of a day of the calendar; undefined where there is no such day. */
function dayOf(year: number, month: number, day: number): number | undefined {
  const ms = Date.UTC(year, month - 1, day);
  const made = new Date(ms);
  const same = made.getUTCFullYear() === year && made.getUTCMonth() === month - 1 && made.getUTCDate() === day;
  return same ? ms / 1000 / DAY_S : undefined;
}

/**
 * The reading of a clock that a field holds: `13:05:01.25`, `2026-03-29 13:05:01,25`, `29.3.2026 13:05:01` (day, month,
 * year) or `2026-03-29T13:05:01.25+02:00`. Anything else, such as an hour of 25 or the 30th of February, is undefined.
 */
export function clockReading(field: string): ClockReading | undefined {
  const found = clock.exec(field.trim());
  if (found === null) return undefined;
  const [, year, month, day, otherDay, otherMonth, otherYear, hour, minute, second, fraction, zone] = found;
  const [h, m, s] = [Number(hour), Number(minute), Number(second ?? 0)];
  if (h > 23 || m > 59 || s > 59 || second === undefined) return undefined;
  const ofDay = h * HOUR_S + m * 60 + s + (fraction === undefined ? 0 : Number(`0.${fraction}`));
  const hasDate = year !== undefined || otherYear !== undefined;
  if (!hasDate) return zone === undefined ? { kind: 'time-of-day', seconds: ofDay } : undefined;
  const days = dayOf(Number(year ?? otherYear), Number(month ?? otherMonth), Number(day ?? otherDay));
  if (days === undefined) return undefined;
  const local = days * DAY_S + ofDay;
  return zone === undefined
    ? { kind: 'date-time', seconds: local }
    : { kind: 'instant', seconds: local - zoneSeconds(zone) };
}

function zoneSeconds(zone: string): number {
  if (zone === 'Z') return 0;
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
