import type { Side } from '@surae/analysis';
import { type CasebookPerson, type DoneItem, dayNumber, type Entry, type PlanItem } from '@surae/casebook';
import {
  courseFacts,
  type FactsOf,
  type GivenFact,
  type LegCourse,
  type MorningTold,
  type SessionTold,
} from '@surae/guidance';
import { doseSince } from './dose-held.ts';
import { known, missing } from './given-fact.ts';
import { isHeavyLine, isImpactCode } from './hard-lines.ts';
import { type LegPlan, legPlan, levelSince } from './programme-given.ts';

type Past = Pick<CasebookPerson, 'visits' | 'planItems' | 'doneItems' | 'morningChecks' | 'runs'>;

function dayText(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}

/** What was told of all of several; null as soon as one was not, unless what was told is over the limit already. */
function worst(told: readonly (number | null)[], limit: number): number | null {
  const known = told.filter((one) => one !== null);
  const most = known.length === 0 ? null : Math.max(...known);
  if (most !== null && most > limit) return most;
  return known.length < told.length ? null : most;
}

/** Pain after a session is of the session and not of an exercise: told once it is told; null where nobody told it. */
function mostTold(told: readonly (number | null)[]): number | null {
  const known = told.filter((one) => one !== null);
  return known.length === 0 ? null : Math.max(...known);
}

function shareOf(done: DoneItem, planned: PlanItem | undefined): number | null {
  if (planned?.sets == null || done.sets === null) return null;
  const sets = done.sets / planned.sets;
  if (planned.repetitions === null) return sets;
  return done.repetitions === null ? null : Math.min(sets, done.repetitions / planned.repetitions);
}

function plannedOf({ planItemId }: DoneItem, items: ReadonlyMap<string, PlanItem>): PlanItem | undefined {
  return planItemId === null ? undefined : items.get(planItemId);
}

function isHeavy(done: DoneItem, items: ReadonlyMap<string, PlanItem>): boolean {
  const planned = plannedOf(done, items);
  return done.load !== null || (planned !== undefined && isHeavyLine(planned));
}

/**
 * Whether a planned line that has no log on a day had no turn on it: it is planned less often than daily, and was logged as often as it
 * was to be in the week up to the day, or since the plan began.
 */
function hasNoTurn({ id, body: { perWeek } }: Entry<PlanItem>, day: string, plan: LegPlan, past: Past): boolean {
  const [on, from] = [dayNumber(day), dayNumber(plan.place.day)];
  if (perWeek === null || perWeek >= 7 || on === null || from === null) return false;
  const days = Math.min(7, on - from + 1);
  const logged = new Set(
    past.doneItems.flatMap(({ body }) => {
      const at = body.planItemId === id ? dayNumber(body.on) : null;
      return at !== null && at <= on && at > on - days ? [at] : [];
    }),
  );
  return logged.size >= Math.floor((perWeek * days) / 7);
}

/** What was done on a day. Of a planned line that had its turn and has no log nobody knows whether it was done: then the share is not known. */
function sessionOf(day: string, done: readonly DoneItem[], past: Past, side: Side, painLimit: number): SessionTold {
  const items = new Map(past.planItems.map(({ id, body }) => [id, body]));
  const plan = legPlan(past, side, day);
  const isWhole =
    plan !== null &&
    plan.lines.length > 0 &&
    plan.lines.every(
      (line) => done.some(({ planItemId }) => planItemId === line.id) || hasNoTurn(line, day, plan, past),
    );
  const shares = done.map((one) => shareOf(one, one.planItemId === null ? undefined : items.get(one.planItemId)));
  const isKnown = isWhole && !shares.includes(null);
  return {
    day,
    shareDone: isKnown ? Math.min(...shares.flatMap((one) => one ?? [])) : null,
    painDuring: worst(
      done.map(({ painDuring }) => painDuring),
      painLimit,
    ),
    painAfter: mostTold(done.map(({ painAfter }) => painAfter ?? null)),
    exertion: worst(
      done.map(({ exertion }) => exertion),
      10,
    ),
    heavy: done.some((one) => isHeavy(one, items)),
    impact: done.some((one) => isImpactCode(plannedOf(one, items)?.code ?? null)),
  };
}

/** Sessions of a leg by day, the oldest first. */
export function sessionsOf(past: Past, side: Side, painLimit: number): readonly SessionTold[] {
  const byDay = new Map<string, DoneItem[]>();
  for (const { body } of past.doneItems) {
    if (body.side === side || body.side === 'both') byDay.set(body.on, [...(byDay.get(body.on) ?? []), body]);
  }
  return [...byDay]
    .sort(([one], [other]) => one.localeCompare(other))
    .map(([day, done]) => sessionOf(day, done, past, side, painLimit));
}

/** What is done more often a week has the days of bounces among its own. */
const apartMost = 3;

/** Days of a week with a session: bounces and heavy raises have days of their own. */
function perWeekOf(lines: readonly Entry<PlanItem>[]): number | null {
  const often = (isImpact: boolean): readonly number[] =>
    lines.filter(({ body }) => isImpactCode(body.code) === isImpact).flatMap(({ body }) => body.perWeek ?? []);
  const [impacts, others] = [often(true), often(false)];
  if (impacts.length + others.length === 0) return null;
  const [impact, other] = [Math.max(0, ...impacts), Math.max(0, ...others)];
  return other > apartMost ? other : Math.min(7, impact + other);
}

/**
 * Days on which a session was planned. A plan says how often, and not when: its days are cut into spans of one session each, and a span
 * without a session counts as planned on its last day.
 */
export function plannedDays(plan: LegPlan, sessions: readonly SessionTold[], today: string): readonly string[] {
  const perWeek = perWeekOf(plan.lines);
  const [from, now] = [dayNumber(plan.place.day), dayNumber(today)];
  if (perWeek === null || from === null || now === null) return [];
  const span = Math.max(1, 7 / perWeek);
  const done = new Set(sessions.map(({ day }) => dayNumber(day)));
  const days: number[] = [];
  for (let at = 0; ; at += 1) {
    const first = from + Math.floor(at * span);
    const last = from + Math.floor((at + 1) * span) - 1;
    if (last >= now) break;
    const inSpan = Array.from({ length: last - first + 1 }, (_, i) => first + i).filter((day) => done.has(day));
    days.push(...(inSpan.length === 0 ? [last] : inSpan));
  }
  return days.map(dayText);
}

/** What was told of mornings; minutes that were told as a span are not known to the minute. */
function morningsOf({ morningChecks }: Past, side: Side): readonly MorningTold[] {
  return morningChecks.map(({ body: { on, pain, stiffnessMin, stiffness } }) => ({
    day: on,
    pain: pain[side],
    stiffnessMin: stiffness === undefined ? stiffnessMin : stiffness === 'none' ? 0 : null,
  }));
}

/** Weeks back over which the worst pain is asked for [d]. */
const lately = 14;

function worstLately(past: Past, side: Side, sessions: readonly SessionTold[], today: string): GivenFact {
  const now = dayNumber(today) ?? 0;
  const isLately = (day: string): boolean => {
    const on = dayNumber(day);
    return on !== null && on <= now && on > now - lately;
  };
  const told = [
    ...sessions.filter(({ day }) => isLately(day)).flatMap(({ painDuring, painAfter }) => [painDuring, painAfter]),
    ...past.runs.filter(({ body }) => isLately(body.on)).map(({ body }) => body.pain[side]),
  ];
  if (told.length === 0) return missing('no-session');
  const numbers = told.filter((one) => one !== null);
  if (numbers.length === 0) return missing('not-told');
  const most = Math.max(...numbers);
  return known(most, 'run', { day: today }, numbers.length < told.length ? { low: most, high: 10 } : {});
}

/** Facts that count what was not logged: without a plan nothing was planned, and nothing is counted. */
const counted = [
  ...(['sessions-logged', 'last-logged', 'missed-in-row', 'hard-days', 'morning-logged'] as const),
  ...(['last-at-dose', 'lowered-since', 'told-in-full', 'planned-two-weeks', 'left-out-two-weeks'] as const),
  'morning-now',
] as const;

/**
 * What sessions, mornings and runs say of a leg.
 *
 * @param past - of the person, without the visit of today [-]
 * @param side - the leg [-]
 * @param today - by the calendar of the place [-]
 * @param painLimit - pain in a session that is too much when it is more, of 10 [1]
 * @returns facts by their code; what was not told is missing [unit of the fact]
 *
 * Source: ours; `courseFacts` of the guidance
 */
export function courseGiven(past: Past, side: Side, today: string, painLimit: number): FactsOf {
  const sessions = sessionsOf(past, side, painLimit);
  const plan = legPlan(past, side, today);
  const hasPlan = plan !== null && plan.lines.length > 0;
  const since = levelSince(past, side, today);
  const sinceDose = doseSince(past, side, today);
  const course: LegCourse = {
    planned: hasPlan ? plannedDays(plan, sessions, today) : [],
    sessions,
    mornings: morningsOf(past, side),
    ...(since === null ? {} : { levelSince: since }),
    ...(sinceDose === null ? {} : { doseSince: sinceDose }),
  };
  const facts = courseFacts(course, today, painLimit);
  const lately = { 'worst-pain-lately': worstLately(past, side, sessions, today) };
  if (!hasPlan)
    return { ...facts, ...lately, ...Object.fromEntries(counted.map((code) => [code, missing('no-plan')])) };
  if (perWeekOf(plan.lines) !== null) return { ...facts, ...lately };
  const open = Object.fromEntries(
    (['last-logged', 'missed-in-row', 'hard-days', 'planned-two-weeks', 'left-out-two-weeks'] as const).map((code) => [
      code,
      missing('days-not-set'),
    ]),
  );
  return { ...facts, ...lately, ...open };
}

/** Whether the morning after a day was at most so much over its usual level; null where it is not known. */
export function morningPassed(past: Past, side: Side, day: string, rise: number): boolean | null {
  const on = dayNumber(day);
  if (on === null) return null;
  const tried: SessionTold = {
    day,
    shareDone: null,
    painDuring: null,
    painAfter: null,
    exertion: null,
    heavy: false,
    impact: false,
  };
  const course: LegCourse = { planned: [], sessions: [tried], mornings: morningsOf(past, side) };
  const over = courseFacts(course, dayText(on + 1), 10)['morning-rise-last'];
  return over === undefined || 'missing' in over ? null : Number(over.value) <= rise;
}
