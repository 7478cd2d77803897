/** A run of samples, half-open [index]. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

/**
 * Runs of samples below a level; a stay above it that is shorter than a given time does not end a run. A gap does, where
 * something may have happened in it unseen.
 *
 * @param timesS - sample times, strictly rising [s]
 * @param samples - the signal at those times [unit of samples]
 * @param level - what is below it belongs to a run [unit of samples]
 * @param joinS - longest stay above that is passed over, >= 0 [s]
 * @param gapS - longest time between two samples that does not part a run [s]
 * @returns runs in time order; empty when nothing is below [index]
 *
 * Source: definition
 */
export function runsBelow(
  timesS: Float64Array,
  samples: Float64Array,
  level: number,
  joinS: number,
  gapS: number,
): Run[] {
  const runs: { from: number; to: number }[] = [];
  for (let i = 0; i < samples.length; i++) {
    if (!(samples[i] < level)) continue;
    let to = i + 1;
    while (to < samples.length && samples[to] < level && timesS[to] - timesS[to - 1] <= gapS) to++;
    const last = runs.at(-1);
    if (last !== undefined && timesS[i] - timesS[last.to - 1] <= joinS) last.to = to;
    else runs.push({ from: i, to });
    // the sample that ends the run may begin the next
    i = to - 1;
  }
  return runs;
}
