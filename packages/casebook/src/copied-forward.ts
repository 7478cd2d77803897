import type { Side } from '@surae/analysis';
import { isTold, proposedHistory } from './history.ts';
import { isSorenessTold } from './legs-tested.ts';
import type { EpisodeLine } from './today/today-facts.ts';
import type { SoreSides, Visit, VisitHistory } from './visit.ts';

/** Where it was sore, as it can be taken over, and from what. */
export interface CopiedSoreness {
  readonly sore: SoreSides;
  /** the one leg that was tested then; absent where both were */
  readonly only?: Side;
  readonly from: 'visit' | 'episode';
  /** when the visit was begun or the episode written down, with offset */
  readonly at: string;
}

/** What lasts, as it can be taken over, and when the visit was begun that it comes from. */
export interface CopiedHistory {
  readonly history: VisitHistory;
  readonly begunAt: string;
}

/**
 * Where it was sore at the last visit that told of both legs, or of the only one that is tested; where there is none, as the newest episode says.
 *
 * @param earlier - visits before this one, the oldest first [-]
 * @param episodes - those that are not over, the oldest first [-]
 * @returns null where nothing was told [-]
 * Source: ours
 */
export function sorenessBefore(
  earlier: readonly Pick<Visit, 'sore' | 'only' | 'begunAt'>[],
  episodes: readonly EpisodeLine[],
): CopiedSoreness | null {
  const last = earlier.findLast(isSorenessTold);
  if (last !== undefined) {
    const { sore, only, begunAt: at } = last;
    return { sore, from: 'visit', at, ...(only === undefined ? {} : { only }) };
  }
  const episode = episodes.at(-1);
  if (episode === undefined) return null;
  const { left, right } = episode.sore;
  return { sore: { left, right }, from: 'episode', at: episode.at };
}

/**
 * What lasts of what was told at the last visit that was asked: old injuries and what holds of the person. Nothing of pain,
 * stiffness or anything else of that day is in it.
 *
 * @param earlier - visits before this one, the oldest first [-]
 * @returns null where nothing that lasts was told [-]
 * Source: ours
 */
export function historyBefore(earlier: readonly Pick<Visit, 'history' | 'begunAt'>[]): CopiedHistory | null {
  const last = earlier.findLast(({ history }) => history !== undefined && isTold(proposedHistory(history)));
  return last === undefined ? null : { history: proposedHistory(last.history), begunAt: last.begunAt };
}
