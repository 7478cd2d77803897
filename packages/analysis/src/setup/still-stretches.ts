import { requireRange } from '../check.ts';
import { findStillRuns } from '../movement/still-runs.ts';
import { mean } from '../signal/moments.ts';
import type { LevelRule, MassRule } from './setup-settings.ts';
import { type StillLevel, type Stretch, stillLevel } from './still-level.ts';

/** A stretch in which the load stood still. */
export interface StillStretch extends StillLevel {
  readonly fromS: number;
  readonly toS: number;
}

/** Blocks on either side over which stillness is asked: with their own, three make a level. */
const halfWindow = 1;

/** Means of equal spans of time; a span without samples takes the mean before it [unit of samples]. */
function blockMeans({ timesS, samples }: Stretch, { blockS }: LevelRule): Float64Array {
  const count = Math.max(1, Math.floor((timesS[timesS.length - 1] - timesS[0]) / blockS));
  const means = new Float64Array(count);
  let from = 0;
  for (let k = 0; k < count; k++) {
    let to = from;
    while (to < timesS.length && timesS[to] - timesS[0] < (k + 1) * blockS) to++;
    means[k] = to > from ? mean(samples.subarray(from, to)) : (means[k - 1] ?? samples[0]);
    from = to;
  }
  return means;
}

/**
 * Stretches of a recording in which the load stood still, each with its level: an empty sensor and one mass after another.
 *
 * Two still stretches next to each other at the same level are one: a swing of the mass parted them.
 *
 * @param recording - samples in time order, n >= 2 [s, N]
 * @param rule - tolerance and lengths, see {@link MassRule} [-]
 * @returns the stretches in time order; empty when nothing stood still [s, N]
 * @throws {@link InputError} as {@link stillLevel}
 *
 * Source: ours
 */
export function stillStretches(recording: Stretch, rule: MassRule): StillStretch[] {
  const { timesS, samples } = recording;
  requireRange(samples.length, samples.length >= 2, 'samples', 'n >= 2');
  const blocks = blockMeans(recording, rule.level);
  const sorted = blocks.slice().sort();
  const tolerance = Math.min(rule.stillMostN, rule.stillShare * (sorted[sorted.length - 1] - sorted[0]) || Infinity);
  const found: StillStretch[] = [];
  for (const run of findStillRuns(blocks, halfWindow, tolerance)) {
    // the blocks at either end may hold the beginning of a movement
    const fromS = timesS[0] + (run.from + (run.from > 0 ? 1 : 0)) * rule.level.blockS;
    const toS = timesS[0] + (run.to - (run.to < blocks.length ? 1 : 0)) * rule.level.blockS;
    const level = levelBetween(recording, fromS, toS, rule.level);
    if (level === null) continue;
    const before = found.at(-1);
    if (before !== undefined && Math.abs(before.level - level.level) <= 2 * tolerance) {
      if (level.spanS > before.spanS) found[found.length - 1] = level;
    } else found.push(level);
  }
  return found;
}

function levelBetween(recording: Stretch, fromS: number, toS: number, rule: LevelRule): StillStretch | null {
  const from = recording.timesS.findIndex((timeS) => timeS >= fromS);
  const after = recording.timesS.findIndex((timeS) => timeS > toS);
  if (from < 0) return null;
  const to = after < 0 ? recording.timesS.length : after;
  if (to - from < 2) return null;
  const part = { timesS: recording.timesS.slice(from, to), samples: recording.samples.slice(from, to) };
  const level = stillLevel(part, rule);
  return level === null ? null : { ...level, fromS, toS };
}
