import { MORNING_LIMITS } from '@surae/shared';
import type { FactsOf, From, GivenFact } from '../given-facts.ts';
import { calendarDay } from './calendar-day.ts';
import { hardDays } from './hard-days.ts';
import { byDay, type LegCourse, type MorningTold, type SessionTold } from './leg-course.ts';
import { type SessionResponse, sessionResponse } from './session-response.ts';
import { leftOut, toldInFull } from './told-lately.ts';
import { usualMorning } from './usual-morning.ts';
import { weekMornings } from './week-mornings.ts';

const log: Omit<From, 'day'> = { what: 'session-log' };

function told(value: number | string | null, day: string, what: string): GivenFact {
  return value === null ? { missing: 'not-told' } : { value, from: { what, day } };
}

function ofSession(response: SessionResponse | undefined, which: 'last' | 'before'): FactsOf {
  const none: GivenFact = { missing: 'no-session' };
  const of = (value: (one: SessionResponse) => number | null, what: string): GivenFact =>
    response === undefined ? none : told(value(response), response.session.day, what);
  return {
    [`share-done-${which}`]: of(({ session }) => session.shareDone, 'session-log'),
    [`pain-during-${which}`]: of(({ session }) => session.painDuring, 'session-log'),
    [`pain-after-${which}`]: of(({ session }) => session.painAfter, 'session-log'),
    [`exertion-${which}`]: of(({ session }) => session.exertion, 'session-log'),
    [`morning-rise-${which}`]: of(({ morningRise }) => morningRise, 'morning-check'),
    [`stiffness-rise-${which}`]: of(({ stiffnessRise }) => stiffnessRise, 'morning-check'),
    [`stiffness-over-double-${which}`]: of(({ stiffnessOverDouble }) => stiffnessOverDouble, 'morning-check'),
  };
}

/** Sessions in a row up to the newest, without a planned one between them that was not logged, and without a long gap. */
function inRow(sessions: readonly number[], unlogged: readonly number[]): number {
  const lastGap = Math.max(Number.NEGATIVE_INFINITY, ...unlogged);
  return sessions.filter((on) => on > lastGap).length;
}

/** Whether this morning is a flare: far over its usual level, or more than is let go whatever is usual. */
function morningNow(mornings: ReadonlyMap<number, MorningTold>, now: number): 'flare' | 'no-flare' | 'not-told' {
  const pain = mornings.get(now)?.pain ?? null;
  if (pain === null) return 'not-told';
  const usual = usualMorning(mornings, now, 'pain');
  const isOver = pain > MORNING_LIMITS.easedAbove.value;
  return isOver || (usual !== null && pain - usual > MORNING_LIMITS.easedRise.value) ? 'flare' : 'no-flare';
}

/**
 * What sessions and mornings say of a leg on a day, as facts that rules ask about.
 *
 * @param course - of the leg; what lies after today is left out [-]
 * @param today - by the calendar of the place [-]
 * @param painLimit - pain in a session that is too much when it is more, of 10 [1]
 * @returns facts by their code; what was not told is missing [unit of the fact]
 * @throws {@link GuidanceError} `not-an-answer` for what is no day
 *
 * Source: ours
 */
export function courseFacts(course: LegCourse, today: string, painLimit: number): FactsOf {
  const now = calendarDay(today);
  const mornings = byDay(course.mornings, calendarDay, now);
  const sessions = byDay<SessionTold>(course.sessions, calendarDay, now);
  const days = [...sessions.keys()].sort((one, other) => other - one);
  const responses = days.map((on) => sessionResponse(sessions.get(on)!, on, mornings));
  // a session that is planned for today is not due before the day is over
  const planned = [...new Set(course.planned.map(calendarDay))].filter((on) => on < now).sort((a, b) => b - a);
  const unlogged = planned.filter((on) => !sessions.has(on));
  const missed = planned.findIndex((on) => sessions.has(on));
  const [last] = days;
  const heavy = days.find((on) => sessions.get(on)?.heavy === true);
  const bounced = days.find((on) => sessions.get(on)?.impact === true);
  const first = days.at(-1);
  const levelSince = course.levelSince === undefined ? Number.NEGATIVE_INFINITY : calendarDay(course.levelSince);
  const doseSince = course.doseSince === undefined ? Number.NEGATIVE_INFINITY : calendarDay(course.doseSince);
  // days of the level before led to this one already
  const isLately = (on: number): boolean => on > now - 7 && on >= levelSince;
  const { low, high } = hardDays(
    responses.filter((_, i) => isLately(days[i]!)),
    unlogged.filter(isLately).length,
    painLimit,
  );
  const weeks = weekMornings(mornings, now, levelSince);
  const after = last === undefined ? undefined : mornings.get(last + 1);
  const morning = last === now ? 'not-yet' : after === undefined || after.pain === null ? 'no' : 'yes';
  const of = (value: number | string, what = log.what): GivenFact => ({ value, from: { what, day: today } });
  const since = (on: number | undefined): GivenFact => (on === undefined ? { missing: 'no-session' } : of(now - on));
  return {
    ...ofSession(responses[0], 'last'),
    ...ofSession(responses[1], 'before'),
    'sessions-logged': of(
      inRow(
        days.filter((on) => on >= doseSince),
        unlogged,
      ),
    ),
    'last-at-dose': last === undefined ? { missing: 'no-session' } : of(last >= doseSince ? 'yes' : 'no'),
    'lowered-since': last === undefined ? { missing: 'no-session' } : of(levelSince > last ? 'yes' : 'no'),
    'told-in-full': of(toldInFull(responses)),
    ...leftOut(planned, sessions, now, of),
    'last-logged':
      planned[0] === undefined ? of(last === undefined ? 'no' : 'yes') : of(sessions.has(planned[0]) ? 'yes' : 'no'),
    'morning-pain-last': after === undefined ? { missing: 'not-told' } : told(after.pain, after.day, 'morning-check'),
    'morning-now': of(morningNow(mornings, now), 'morning-check'),
    'morning-logged': last === undefined ? { missing: 'no-session' } : of(morning, 'morning-check'),
    'missed-in-row': of(missed < 0 ? planned.length : missed),
    'days-since-session': since(last),
    'hard-days': { value: low, low, high, from: { what: 'morning-check', day: today } },
    'morning-weeks': of(weeks.weeks, 'morning-check'),
    'morning-slope': weeks.slope === null ? { missing: 'too-few' } : of(weeks.slope, 'morning-check'),
    'morning-slope-least': weeks.slopeLeast === null ? { missing: 'too-few' } : of(weeks.slopeLeast, 'morning-check'),
    'week-trend': of(weeks.trend, 'morning-check'),
    'days-since-heavy': since(heavy),
    'days-since-bounces':
      bounced !== undefined || first === undefined
        ? since(bounced)
        : { value: now - first, low: now - first, high: Number.POSITIVE_INFINITY, from: { ...log, day: today } },
  };
}
