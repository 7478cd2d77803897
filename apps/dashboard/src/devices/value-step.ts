/** How far from whole steps values may lie, as a share of the step; ours [-] */
const tolerance = 0.02;

/** Values that are as near as this to each other are one value; ours [unit of the values] */
const same = 1e-9;

/** Fewer different values tell no step; ours */
const fewest = 4;

/**
 * The step that all values are whole multiples of, apart from a shift; null when they show none.
 *
 * Values that change little may all lie on a coarser grid than that of the sensor: the step is the finest that was needed.
 */
export function valueStep(values: Iterable<number>): number | null {
  const sorted = [...new Set(values)]
    .sort((a, b) => a - b)
    .filter((value, i, all) => i === 0 || value - all[i - 1]! > same);
  if (sorted.length < fewest) return null;
  const waits = sorted.slice(1).map((value, i) => value - sorted[i]!);
  const step = Math.min(...waits);
  const first = sorted[0]!;
  const off = sorted.map((value) => Math.abs((value - first) / step - Math.round((value - first) / step)));
  return Math.max(...off) <= tolerance ? step : null;
}
