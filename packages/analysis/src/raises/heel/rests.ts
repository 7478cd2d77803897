import type { Interval } from '../../signal/intervals.ts';
import type { Judged } from './set-isolation.ts';

/** How far before and after the set the stance still belongs to it [s]. */
const besideS = 8;

/**
 * Stretches between the repetitions of a set and right beside it in which the heel is down and nothing else happens.
 *
 * @param moves - start and end of each repetition, in time order [s]
 * @param judged - every bump, those that were left out too; they are no rest [-]
 * @param timeOf - time of a sample index [s]
 * @param whole - first and last instant of the recording [s]
 * @returns stretches in time order; the whole recording between other bumps when there is no repetition [s]
 *
 * Source: ours
 */
export function restsBetween(
  moves: readonly { readonly startS: number; readonly endS: number }[],
  judged: readonly Judged[],
  timeOf: (index: number) => number,
  whole: Interval,
): Interval[] {
  const busy: Interval[] = moves.map(({ startS, endS }) => ({ fromS: startS, toS: endS }));
  for (const { candidate, accepted } of judged) {
    if (accepted) continue;
    busy.push({
      fromS: timeOf(candidate.halfUpIndex) - 1.2 * candidate.upS - 0.1,
      toS: timeOf(candidate.halfDownIndex) + 1.2 * candidate.downS + 0.1,
    });
  }
  busy.sort((a, b) => a.fromS - b.fromS);
  const first = moves[0];
  const last = moves.at(-1);
  const endS = last === undefined ? whole.toS : Math.min(whole.toS, last.endS + besideS);
  let fromS = first === undefined ? whole.fromS : Math.max(whole.fromS, first.startS - besideS);
  const rests: Interval[] = [];
  for (const one of busy) {
    if (one.toS <= fromS) continue;
    if (one.fromS > fromS) rests.push({ fromS, toS: Math.min(one.fromS, endS) });
    fromS = one.toS;
    if (fromS >= endS) break;
  }
  if (endS > fromS) rests.push({ fromS, toS: endS });
  return rests;
}
