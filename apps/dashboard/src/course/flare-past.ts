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

/** Loads of one kind, which are in no unit of another: exercises in minutes of a raise, runs in minutes. */
export type FlareKind = 'exercises' | 'running';

/** Days of one leg with the mornings after them, and what they say of its own threshold. */
export interface FlarePast {
  readonly side: Side;
  readonly kind: FlareKind;
  /** the oldest first; loads in minutes */
  readonly sessions: readonly SessionAndMorning[];
  readonly found: FlareThreshold;
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
 * today has no morning yet and is left out; a day of which nothing was written down is no day without load.
 */
export function flarePast(past: LoadPast, today: string): readonly FlarePast[] {
  const now = dayNumber(today);
  if (now === null) return [];
  const from = dayText(now - morningDays + 1);
  const isIn = (on: string): boolean => on >= from && on < today;
  return sides.flatMap((side) => {
    const mornings = morningsOf(past, side);
    const loads = { exercises: exerciseLoads(past, side, isIn), running: runLoads(past, isIn) } as const;
    return (['exercises', 'running'] as const).flatMap((kind): FlarePast[] => {
      const sessions = [...loads[kind]].map(([on, load]): SessionAndMorning => {
        return { on, load, isFlare: flaredAfter(mornings, dayNumber(on) ?? now) };
      });
      return sessions.length === 0 ? [] : [{ side, kind, sessions, found: flareThreshold(sessions) }];
    });
  });
}
