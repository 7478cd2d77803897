import type { Side } from '@surae/analysis';
import { type CasebookPerson, dayNumber, type PlanItem, planOf } from '@surae/casebook';
import { dayText } from './day-text.ts';

/** How many days each session of a plan has; `not-said` where the plan does not say how often. */
type Turn = number | 'not-said' | null;

type Past = Pick<CasebookPerson, 'visits' | 'planItems'>;

/** Planned sessions of some days that nobody wrote down. */
export interface Unlogged {
  /** the day by which each one was due; it is not known which day it was done on, or whether it was */
  readonly days: readonly string[];
  /** whether a plan of these days does not say how often, so that what is missing cannot be counted */
  readonly oftenNotSaid: boolean;
}

function exerciseTurn(items: readonly PlanItem[], side: Side): Turn {
  const own = items.filter((one) => one.of === 'exercise' && (one.side === side || one.side === 'both'));
  if (own.length === 0) return null;
  const often = own.flatMap(({ perWeek }) => perWeek ?? []);
  return often.length === 0 ? 'not-said' : Math.max(1, 7 / Math.max(...often));
}

function runTurn(items: readonly PlanItem[]): Turn {
  const run = items.find(({ of }) => of === 'running')?.run;
  if (run == null || run.mostS === 0 || run.mostM === 0) return null;
  return run.daysBetween === null ? 'not-said' : run.daysBetween + 1;
}

/** The last day of each span of a turn in which nothing was written down; a span that is not over yet is not due. */
function openSpans(days: readonly string[], turn: number, isTold: (day: string) => boolean): readonly string[] {
  const found: string[] = [];
  for (let at = 0; ; at += 1) {
    const span = days.slice(Math.floor(at * turn), Math.floor((at + 1) * turn));
    if (span.length === 0 || Math.floor((at + 1) * turn) > days.length) return found;
    if (!span.some(isTold)) found.push(span.at(-1)!);
  }
}

function unlogged(turns: readonly (readonly [string, Turn])[], isTold: (day: string) => boolean): Unlogged {
  const days: string[] = [];
  let same: string[] = [];
  for (const [at, [on, turn]] of turns.entries()) {
    same.push(on);
    if (turns[at + 1]?.[1] === turn) continue;
    if (typeof turn === 'number') days.push(...openSpans(same, turn, isTold));
    same = [];
  }
  return { days, oftenNotSaid: turns.some(([, turn]) => turn === 'not-said') };
}

/**
 * Planned sessions of a leg, and planned runs, without a log. A plan says how often, and not when: its days are cut into spans of one
 * session each, and a span in which nothing was written down has one that is missing. It may have been done: it is unknown, and no load
 * of zero. Of runs, a span of which somebody said that every run is written down has none.
 *
 * @param past - visits, plans and the runs that are known to be whole [-]
 * @param span - first day, and the first day after it [-]
 * @param logged - days of each kind with an entry [-]
 * @returns see {@link Unlogged}, of both legs and of runs [-]
 *
 * Source: ours
 */
export function unloggedDays(
  past: Past & Pick<CasebookPerson, 'runsWhole'>,
  [from, until]: readonly [number, number],
  logged: { readonly exercises: Readonly<Record<Side, ReadonlySet<string>>>; readonly running: ReadonlySet<string> },
): Readonly<Record<Side | 'running', Unlogged>> {
  const days = Array.from({ length: Math.max(0, until - from) }, (_, i) => dayText(from + i));
  const held = days.map((on) => [on, (planOf(past, on)?.items ?? []).map(({ body }) => body)] as const);
  const kept = past.runsWhole.map(({ body }) => [dayNumber(body.from) ?? 0, dayNumber(body.until) ?? -1] as const);
  const isKept = (on: string): boolean =>
    kept.some(([first, last]) => dayNumber(on)! >= first && dayNumber(on)! <= last);
  const ofLeg = (side: Side): Unlogged =>
    unlogged(
      held.map(([on, items]) => [on, exerciseTurn(items, side)] as const),
      (on) => logged.exercises[side].has(on),
    );
  return {
    left: ofLeg('left'),
    right: ofLeg('right'),
    running: unlogged(
      held.map(([on, items]) => [on, runTurn(items)] as const),
      (on) => logged.running.has(on) || isKept(on),
    ),
  };
}
