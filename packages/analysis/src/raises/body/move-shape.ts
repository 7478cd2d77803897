/** How a move spends its time: the log of its speed is ends log(1 - x^2) + tilt x + middle x^2, x from -1 at its bottom to 1. */
export interface MoveShape {
  /** how gently a move starts and stops: 1 as a half cosine, 2 as a minimum-jerk move [-] */
  readonly ends: number;
  /** below 0: quick near the bottom, slow near the top [-] */
  readonly tilt: number;
  /** above 0: two phases with a slower moment between; below 0: one brief burst [-] */
  readonly middle: number;
}

/** Speed of a move of unit way in unit time at equal steps, and how it changes with its shape. */
export interface SpeedTable {
  readonly speed: Float64Array;
  readonly slope: Float64Array;
  readonly byEnds: Float64Array;
  readonly byTilt: Float64Array;
  readonly byMiddle: Float64Array;
}

/** Steps of a table [-]. */
export const SPEED_STEPS = 160;

/**
 * Speed of a move of unit way in unit time, and its derivatives by time and by the log of `ends`, `tilt` and `middle`.
 *
 * @param shape - of the move upwards [-]
 * @param down - whether the same shape is run from the top to the bottom [-]
 * @returns tables over equal steps of the time, both ends included [-]
 *
 * Source: ours; an exponential family has the derivative v (t - mean of t) by the factor of each of its terms t
 */
export function speedTable(shape: MoveShape, down: boolean): SpeedTable {
  const n = SPEED_STEPS + 1;
  const speed = new Float64Array(n);
  const terms = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const sums = [0, 0, 0];
  let total = 0;
  for (let i = 1; i < SPEED_STEPS; i++) {
    const along = (2 * i) / SPEED_STEPS - 1;
    const x = down ? -along : along;
    const gentle = Math.log(1 - x * x);
    const value = Math.exp(shape.ends * gentle + shape.tilt * x + shape.middle * x * x);
    speed[i] = value;
    total += value / SPEED_STEPS;
    terms[0][i] = shape.ends * gentle;
    terms[1][i] = x;
    terms[2][i] = x * x;
    for (let t = 0; t < 3; t++) sums[t] += (value * terms[t][i]) / SPEED_STEPS;
  }
  const means = sums.map((sum) => sum / total);
  for (let i = 0; i < n; i++) speed[i] /= total;
  const [byEnds, byTilt, byMiddle] = terms.map((term, t) => term.map((value, i) => speed[i] * (value - means[t])));
  const slope = speed.map((_, i) => {
    const [before, after] = [Math.max(0, i - 1), Math.min(SPEED_STEPS, i + 1)];
    return ((speed[after] - speed[before]) * SPEED_STEPS) / (after - before);
  });
  return { speed, slope, byEnds, byTilt, byMiddle };
}

/**
 * Value of a table at a share of the time, linear between steps.
 *
 * @param table - one of the arrays of a {@link SpeedTable} [-]
 * @param share - of the time; outside 0 to 1 gives 0 [-]
 * @returns value [-]
 *
 * Source: definition
 */
export function tableAt(table: Float64Array, share: number): number {
  const at = share * SPEED_STEPS;
  if (at <= 0 || at >= SPEED_STEPS) return 0;
  const i = Math.floor(at);
  return table[i] + (at - i) * (table[i + 1] - table[i]);
}

/**
 * Speed at a share of the time, cubic between steps so that its slope is the one of the table.
 *
 * @param table - of the move [-]
 * @param share - of the time; outside 0 to 1 gives 0 [-]
 * @returns speed [-]
 *
 * Source: Hermite interpolation (definition)
 */
export function speedAt(table: SpeedTable, share: number): number {
  const at = share * SPEED_STEPS;
  if (at <= 0 || at >= SPEED_STEPS) return 0;
  const i = Math.floor(at);
  const u = at - i;
  const [a, b] = [table.speed[i], table.speed[i + 1]];
  const [da, db] = [table.slope[i] / SPEED_STEPS, table.slope[i + 1] / SPEED_STEPS];
  return a + u * (da + u * (3 * (b - a) - 2 * da - db + u * (2 * (a - b) + da + db)));
}
