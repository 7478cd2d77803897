import type { Side } from '@surae/analysis';
import type { Visit, VisitSet } from './visit.ts';

/** Seconds from one written time to another; null when one of them cannot be read. */
export function secondsBetween(fromIso: string, toIso: string): number | null {
  const seconds = (Date.parse(toIso) - Date.parse(fromIso)) / 1000;
  return Number.isFinite(seconds) ? seconds : null;
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
