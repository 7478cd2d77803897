import type { DoneAtHome, Handout, HandoutLine, RunAtHome } from '@surae/exchange';
import { HOME_TODAY_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** A line of the plan that holds today, with its place among all lines. */
export interface TodayLine {
  readonly place: number;
  readonly line: HandoutLine;
}

const DAY_MS = 86_400_000;

/** What of a plan holds on a day, in its order. Only what a clinician confirmed stands in a code at all. */
export function linesOn({ plan }: Pick<Handout, 'plan'>, day: string): readonly TodayLine[] {
  return plan
    .map((line, place) => ({ place, line }))
    .filter(({ line: { from, until } }) => from <= day && (until === null || until >= day));
}

/** The exercises of a day. */
export function exercisesOn(handout: Pick<Handout, 'plan'>, day: string): readonly TodayLine[] {
  return linesOn(handout, day).filter(({ line }) => line.of === 'exercise');
}

/** The limit for runs of a day; undefined where none was confirmed. */
export function runLimitOn(handout: Pick<Handout, 'plan'>, day: string): HandoutLine | undefined {
  return linesOn(handout, day).find(({ line }) => line.of === 'running')?.line;
}

/** What was done of a line on a day; undefined where nothing was. */
export function doneOn(
  done: readonly DoneAtHome[],
  planKey: number,
  place: number,
  day: string,
): DoneAtHome | undefined {
  return done.find((one) => one.planKey === planKey && one.place === place && one.day === day);
}

/** What a set is; null where that is left open. */
export function setWords({ repetitions, holdS }: Pick<HandoutLine, 'repetitions' | 'holdS'>): string | null {
  const words = HOME_TODAY_WORDS;
  if (holdS === null) return repetitions === null ? null : fill(words['each-set'], { count: repetitions });
  if (repetitions === null || repetitions === 1) return fill(words['each-hold'], { seconds: holdS });
  return fill(words['each-holds'], { count: repetitions, seconds: holdS });
}

/** Legs of which pain after the exercises is asked: those that are asked about in the morning and were done with today. */
export function afterLegs(
  asked: Handout['asked'],
  done: readonly HandoutLine['side'][],
): readonly ('left' | 'right')[] {
  return (['left', 'right'] as const).filter(
    (leg) => (asked === leg || asked === 'both') && done.some((side) => side === leg || side === 'both'),
  );
}

function daysBefore(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - days * DAY_MS).toISOString().slice(0, 10);
}

/** On how many of the last seven days, this one among them, a line was done. */
export function daysDone(done: readonly DoneAtHome[], planKey: number, place: number, day: string): number {
  const first = daysBefore(day, 6);
  const days = done.filter(
    (one) => one.planKey === planKey && one.place === place && one.day >= first && one.day <= day,
  );
  return new Set(days.map((one) => one.day)).size;
}

/** The newest run up to a day, and the first day of the next one where the break after it is not over; null where it is. */
export function runBreak(
  runs: readonly RunAtHome[],
  { run }: Pick<HandoutLine, 'run'>,
  day: string,
): { readonly last: string; readonly next: string | null } | undefined {
  const last = runs.filter((one) => one.day <= day).at(-1)?.day;
  if (last === undefined) return undefined;
  const between = run?.daysBetween ?? 0;
  const next = daysBefore(last, -(between + 1));
  return { last, next: between > 0 && next > day ? next : null };
}

/** Whether a run was more than its limit; where the other of time and way was told, that is not known and not said. */
export function isOver({ run }: Pick<HandoutLine, 'run'>, { durationS, distanceM }: RunAtHome): boolean {
  if (run === null) return false;
  const overTime = run.mostS !== null && durationS !== null && durationS > run.mostS;
  return overTime || (run.mostM !== null && distanceM !== null && distanceM > run.mostM);
}
