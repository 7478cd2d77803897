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
  // Before the set only the stance right before it counts, after the set only the one right after.
  const strayBefore = busy.filter((one) => first !== undefined && one.toS <= first.startS).at(-1);
  const strayAfter = busy.find((one) => last !== undefined && one.fromS >= last.endS);
  const beginS = first === undefined ? whole.fromS : Math.max(first.startS - besideS, strayBefore?.toS ?? whole.fromS);
  const endS = last === undefined ? whole.toS : Math.min(last.endS + besideS, strayAfter?.fromS ?? whole.toS);
  let fromS = Math.max(whole.fromS, beginS);
  const toS = Math.min(whole.toS, endS);
  const rests: Interval[] = [];
  for (const one of busy) {
    if (one.toS <= fromS) continue;
    if (one.fromS > fromS) rests.push({ fromS, toS: Math.min(one.fromS, toS) });
    fromS = one.toS;
    if (fromS >= toS) break;
  }
  if (toS > fromS) rests.push({ fromS, toS });
  return rests;
}
