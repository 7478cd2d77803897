import { type CasebookPerson, dayNumber, type PlanItem, planOf, type Run, type RunsWhole } from '@surae/casebook';
import type { RunLog } from '@surae/guidance';

type Past = Pick<CasebookPerson, 'visits' | 'planItems' | 'runs'>;

/** Whether somebody runs, as far as plans and runs that are kept say so. */
export type RunState =
  /** the plan says no running for now */
  | 'paused'
  /** a plan of first runs was kept; `begun` is the day of the first of them, once there was one */
  | 'returning'
  /** runs were logged of late, and no plan paused them */
  | 'running'
  /** nothing that is kept tells */
  | 'not-known';

/** How running stands on a day. */
export interface RunStanding {
  readonly state: RunState;
  /** day of the first run of a return; null before it, and for who is in none */
  readonly begun: string | null;
}

/** Runs up to a day, the oldest first. */
export function runsUpTo({ runs }: Pick<Past, 'runs'>, day: string): readonly Run[] {
  return runs
    .map(({ body }) => body)
    .filter(({ on }) => on <= day)
    .toSorted((one, other) => one.on.localeCompare(other.on));
}

/** Runs as the guidance reads them. A day without one is unknown, unless somebody said that every run of it is written down. */
export function runLogOf(past: Pick<CasebookPerson, 'runs' | 'runsWhole'>, day: string): RunLog {
  return {
    runs: runsUpTo(past, day).map(({ on, durationS, distanceM }) => ({ on, durationS, distanceM })),
    kept: past.runsWhole.map(({ body: { from, until } }) => ({ from, until })),
  };
}

/** The days before a day that the cap of its runs looks at, such as they are asked about. */
export function runsAsked(day: string, days: number): RunsWhole {
  const number = dayNumber(day) ?? 0;
  const text = (on: number): string => new Date(on * 86_400_000).toISOString().slice(0, 10);
  return { from: text(number - days), until: text(number - 1) };
}

/** Whole days from a day to another one. */
export function daysFrom(day: string, today: string): number {
  return (dayNumber(today) ?? 0) - (dayNumber(day) ?? 0);
}

/** Whether a line is that of first runs, by the rule that proposed it or by what the patient reads of why. */
function isFirstRuns({ proposedBy, why }: Pick<PlanItem, 'proposedBy' | 'why'>): boolean {
  return why === 'first-runs' || proposedBy?.startsWith('guidance.first-run/') === true;
}

function isPause({ run }: Pick<PlanItem, 'run'>): boolean {
  return run?.mostS === 0 || run?.mostM === 0;
}

/** First day of a pause that no later limit for runs came after; null where none is. The day on which it was to end ends no pause by itself. */
function pausedSince({ visits, planItems }: Past): string | null {
  const byId = new Map(planItems.map((one) => [one.id, one.body]));
  for (const { visit } of visits.toReversed()) {
    if (visit.planEnded === true) return null;
    const lines = (visit.plan ?? []).flatMap((id) => byId.get(id) ?? []).filter(({ of }) => of === 'running');
    if (lines.length > 0) return lines.find(isPause)?.from ?? null;
  }
  return null;
}

/** First day of the plan of first runs that later limits went on from; null where a pause, or no such plan, is before them. */
function returnSince({ visits, planItems }: Past): string | null {
  const byId = new Map(planItems.map((one) => [one.id, one.body]));
  for (const { visit } of visits.toReversed()) {
    if (visit.planEnded === true) return null;
    const lines = (visit.plan ?? []).flatMap((id) => byId.get(id) ?? []).filter(({ of }) => of === 'running');
    const first = lines.find(isFirstRuns);
    if (first !== undefined) return first.from;
    if (lines.some(isPause)) return null;
  }
  return null;
}

/**
 * How running stands on a day, by the plan that holds and the runs that are kept.
 *
 * @param past - visits, plans and runs of the person [-]
 * @param day - by the calendar of the place [-]
 * @param recentDays - days in which a run says that somebody runs [d]
 * @returns the state, and where a return began [-]
 *
 * Source: ours
 */
export function runStanding(past: Past, day: string, recentDays: number): RunStanding {
  const line = planOf(past, day)?.items.find(({ body }) => body.of === 'running')?.body;
  if (line !== undefined && isPause(line)) return { state: 'paused', begun: null };
  const runs = runsUpTo(past, day);
  // who has not run since goes by what is asked before a first run, and not by what was usual before the pause
  const paused = pausedSince(past);
  if (paused !== null && runs.every(({ on }) => on < paused)) return { state: 'paused', begun: null };
  const since = returnSince(past);
  if (since !== null) return { state: 'returning', begun: runs.find(({ on }) => on >= since)?.on ?? null };
  const last = runs.at(-1);
  const isRecent = last !== undefined && daysFrom(last.on, day) <= recentDays;
  return { state: isRecent ? 'running' : 'not-known', begun: null };
}
