import type { Side } from '@surae/analysis';
import { dayNumber } from '@surae/casebook';
import {
  courseFacts,
  type FlareThreshold,
  flareThreshold,
  loadByDay,
  type MorningTold,
  type SessionAndMorning,
} from '@surae/guidance';
import { dayText } from './day-text.ts';
import { type LoadPast, plannedLine } from './load-diary.ts';
import { morningDays } from './mornings.ts';
import { unloggedDays } from './unlogged-days.ts';

/** Loads of one kind, which are in no unit of another: exercises in minutes of a raise, runs in minutes. */
export type FlareKind = 'exercises' | 'running';

/** Days of one leg with the mornings after them, and what they say of its own threshold. */
export interface FlarePast {
  readonly side: Side;
  readonly kind: FlareKind;
  /** the oldest first; loads in minutes */
  readonly sessions: readonly SessionAndMorning[];
  readonly found: FlareThreshold;
  /** days by which planned sessions were due that nobody wrote down: they stand among the sessions, with a load that is not known */
  readonly unlogged: readonly string[];
  /** whether a plan does not say how often, so that what is missing cannot be counted */
  readonly oftenNotSaid: boolean;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

function morningsOf({ morningChecks }: LoadPast, side: Side): readonly MorningTold[] {
  return morningChecks.map(({ body: { on, pain } }) => ({ day: on, pain: pain[side], stiffnessMin: null }));
}

/** Whether the morning after a day was a flare of a leg; null was not told. */
function flaredAfter(mornings: readonly MorningTold[], day: number): boolean | null {
  // a pain limit decides nothing of a morning
  const told = courseFacts({ planned: [], sessions: [], mornings }, dayText(day + 1), 10)['morning-now'];
  if (told === undefined || 'missing' in told || told.value === 'not-told') return null;
  return told.value === 'flare';
}

/** Load of a leg by exercises on each day with an entry; null where a part of the day has no load that is known [min]. */
function exerciseLoads(past: LoadPast, side: Side, isIn: (on: string) => boolean): ReadonlyMap<string, number | null> {
  const entries = past.doneItems.map(({ body }) => body).filter(({ on }) => isIn(on));
  const days = [...new Set(entries.map(({ on }) => on))].sort();
  const lines = past.planItems.filter(({ body }) => body.of === 'exercise').map(plannedLine);
  const loads = loadByDay(
    days.map((on) => ({ on, lines: [] })),
    lines,
    entries,
    past.person.bodyMassKg,
  );
  return new Map(
    loads.flatMap(({ on, legs }) => {
      const { done } = legs[side];
      if (done === null) return [];
      const isWhole = done.unweighedS === 0 && done.amountsUnknown === 0 && done.asRaiseS !== null;
      return [[on, isWhole ? (done.asRaiseS[0] + done.asRaiseS[1]) / 120 : null] as const];
    }),
  );
}

/** Minutes of running on each day with a run; null where a run of it has no time. */
function runLoads({ runs }: LoadPast, isIn: (on: string) => boolean): ReadonlyMap<string, number | null> {
  const byDay = new Map<string, number | null>();
  for (const { body } of runs.toSorted((one, other) => one.body.on.localeCompare(other.body.on))) {
    if (!isIn(body.on)) continue;
    const before = byDay.get(body.on);
    const minutes = body.durationS === null ? null : body.durationS / 60;
    byDay.set(body.on, before === undefined ? minutes : before === null || minutes === null ? null : before + minutes);
  }
  return byDay;
}

/**
 * Days with a load and the mornings after them, by leg and kind of load, and the person's own threshold where they can carry it. A day of
 * today has no morning yet and is left out; a day of which nothing was written down is no day without load, and a session that was
 * planned and not written down is one whose load is not known.
 */
export function flarePast(past: LoadPast, today: string): readonly FlarePast[] {
  const now = dayNumber(today);
  if (now === null) return [];
  const from = dayText(now - morningDays + 1);
  const isIn = (on: string): boolean => on >= from && on < today;
  const exercises = { left: exerciseLoads(past, 'left', isIn), right: exerciseLoads(past, 'right', isIn) } as const;
  const running = runLoads(past, isIn);
  const missing = unloggedDays(past, [dayNumber(from) ?? now, now], {
    exercises: { left: new Set(exercises.left.keys()), right: new Set(exercises.right.keys()) },
    running: new Set(running.keys()),
  });
  return sides.flatMap((side) => {
    const mornings = morningsOf(past, side);
    const loads = { exercises: exercises[side], running } as const;
    return (['exercises', 'running'] as const).flatMap((kind): FlarePast[] => {
      const { days, oftenNotSaid } = missing[kind === 'exercises' ? side : 'running'];
      const all = [...loads[kind], ...days.map((on) => [on, null] as const)];
      const sessions = all
        .toSorted(([one], [other]) => one.localeCompare(other))
        .map(([on, load]): SessionAndMorning => {
          return { on, load, isFlare: flaredAfter(mornings, dayNumber(on) ?? now) };
        });
      // of what was planned and never written down alone there is nothing to tell
      if (loads[kind].size === 0) return [];
      return [{ side, kind, sessions, found: flareThreshold(sessions), unlogged: days, oftenNotSaid }];
    });
  });
}
