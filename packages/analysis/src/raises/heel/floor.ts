import { findStillRuns } from '../../movement/still-runs.ts';
import type { Bump } from './bumps.ts';

/** One piece of evidence for the level at which the heel rests. */
export interface FloorVote {
  readonly timeS: number;
  readonly level: number;
  readonly weight: number;
  /** which rest it belongs to: pieces of one rest share its fate [-] */
  readonly rest: number;
}

/**
 * Level of the heel at rest for the recording as a whole: where most evidence gathers. Each low between two highs
 * speaks once, each stillness as long as it lasts, except the stillness at a top.
 *
 * @param smooth - low-passed level [m]
 * @param bumps - highs and lows of it [index, m]
 * @param sampleRateHz - samples per second [Hz]
 * @param rule - window of stillness [s], greatest range within it [m]
 * @returns level at rest; undefined when there is neither stillness nor a low [m]
 *
 * Source: ours (mode of a weighted kernel density)
 */
export function restLevel(
  smooth: Float64Array,
  bumps: readonly Bump[],
  sampleRateHz: number,
  rule: { readonly stillWindowS: number; readonly stillRangeM: number },
): number | undefined {
  const half = Math.max(1, Math.round((rule.stillWindowS / 2) * sampleRateHz));
  const votes: { level: number; weight: number }[] = [];
  let next = 0;
  for (const run of findStillRuns(smooth, half, rule.stillRangeM)) {
    while (next < bumps.length && bumps[next].topIndex < run.from) next++;
    const bump = bumps[next];
    const onTop =
      bump !== undefined && bump.topIndex < run.to && bump.top - Math.max(bump.left, bump.right) > 2 * rule.stillRangeM;
    // a stance of many seconds says no more than a set of many lows
    if (!onTop) votes.push({ level: run.level, weight: Math.min(8, (run.to - run.from) / sampleRateHz) });
  }
  bumps.forEach((bump, i) => {
    if (i > 0 && Math.min(bump.top, bumps[i - 1].top) - bump.left > 2 * rule.stillRangeM) {
      votes.push({ level: bump.left, weight: 1 });
    }
  });
  return mode(votes, rule.stillRangeM);
}

function mode(votes: readonly { level: number; weight: number }[], width: number): number | undefined {
  const sorted = [...votes].sort((a, b) => a.level - b.level);
  let best: number | undefined;
  let most = 0;
  let from = 0;
  for (let i = 0; i < sorted.length; i++) {
    const centre = sorted[i].level;
    while (sorted[from].level < centre - 3 * width) from++;
    let density = 0;
    let mean = 0;
    for (let j = from; j < sorted.length && sorted[j].level <= centre + 3 * width; j++) {
      const near = sorted[j].weight * Math.exp(-0.5 * ((sorted[j].level - centre) / width) ** 2);
      density += near;
      mean += near * sorted[j].level;
    }
    if (density > most) {
      most = density;
      best = mean / density;
    }
  }
  return best;
}
