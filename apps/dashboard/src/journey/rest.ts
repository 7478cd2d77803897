import type { Side } from '@surae/analysis';
import type { Visit, VisitSet } from './visit.ts';

/** What is told aloud while a rest runs. */
export type RestNews = 'one-minute' | 'half-a-minute' | 'over';

const marks: readonly (readonly [number, RestNews])[] = [
  [60, 'one-minute'],
  [30, 'half-a-minute'],
  [0, 'over'],
];

/** Seconds from one written time to another; null when one of them cannot be read. */
export function secondsBetween(fromIso: string, toIso: string): number | null {
  const seconds = (Date.parse(toIso) - Date.parse(fromIso)) / 1000;
  return Number.isFinite(seconds) ? seconds : null;
}

/** What passing from one remaining time to a later one is to be told, the last mark that was passed [s]. */
export function restNews(leftBeforeS: number, leftNowS: number): RestNews | undefined {
  return marks.filter(([atS]) => leftBeforeS > atS && leftNowS <= atS).at(-1)?.[1];
}

/** A time as minutes and seconds, such as 1:05; below zero it stands at 0:00. */
export function minutesAndSeconds(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** What the rest between two legs hangs on, by either test. */
interface TestedSide {
  readonly choice: { readonly side: Side };
  readonly begunAt: string;
  readonly stoppedAt: string | null;
  readonly setAside: boolean;
}

/** The last one of each side that was not set aside, in the order in which they were begun. */
export function countingOf<Tested extends TestedSide>(sets: readonly Tested[]): Tested[] {
  const counting = sets.filter(({ setAside }) => !setAside);
  return counting.filter(
    (set, at) => !counting.some((later, place) => place > at && later.choice.side === set.choice.side),
  );
}

/** The sets that count, in the order in which they were begun. */
export function countingSets({ sets }: Visit): VisitSet[] {
  return countingOf(sets);
}

/** Rest between two sides as it was taken: from the stop of the first to the begin of the second; null when unknown [s]. */
export function restBetweenSidesS([first, second]: readonly TestedSide[]): number | null {
  if (first?.stoppedAt == null || second === undefined) return null;
  return secondsBetween(first.stoppedAt, second.begunAt);
}

/** Rest between the sides of heel raises as it was taken; null when unknown [s]. */
export function restTakenS(visit: Visit): number | null {
  return restBetweenSidesS(countingSets(visit));
}
