/**
 * How a smooth move goes from one posture to another: share of the way against share of the time, tabulated. Both run
 * from 0 to 1, and the speed is zero at either end.
 */
export interface MoveShape {
  readonly name: string;
  /** share of the way at equal steps of time, both ends included [-] */
  readonly way: Float64Array;
  /** speed at the same steps: shares of the way per share of the time [-] */
  readonly speed: Float64Array;
}

const steps = 256;

function tabulate(name: string, way: (u: number) => number, speed: (u: number) => number): MoveShape {
  const grid = Float64Array.from({ length: steps + 1 }, (_, i) => i / steps);
  return { name, way: grid.map(way), speed: grid.map(speed) };
}

/**
 * The family of moves that a set is compared with: the same way and time, more or less abrupt at the ends, and with the
 * greatest speed in the middle, earlier or later.
 *
 * @returns shapes, the usual one (minimum jerk) first [-]
 *
 * Source: Flash & Hogan (1985), J Neurosci 5:1688-1703 (minimum jerk); half cosine and minimum snap: definition; early and late: ours
 */
export function moveShapes(): MoveShape[] {
  const bases: [string, (u: number) => number, (u: number) => number][] = [
    ['minimum-jerk', (u) => u * u * u * (10 + u * (-15 + 6 * u)), (u) => 30 * (u * (1 - u)) ** 2],
    ['cosine', (u) => (1 - Math.cos(Math.PI * u)) / 2, (u) => (Math.PI / 2) * Math.sin(Math.PI * u)],
    ['minimum-snap', (u) => u ** 4 * (35 + u * (-84 + u * (70 - 20 * u))), (u) => 140 * (u * (1 - u)) ** 3],
  ];
  const warps: [string, number][] = [
    ['', 0],
    [' early', 0.2],
    [' late', -0.2],
  ];
  // The warped time u + k u (1 - u) runs from 0 to 1 as long as |k| < 1.
  return warps.flatMap(([suffix, k]) =>
    bases.map(([name, way, speed]) =>
      tabulate(
        name + suffix,
        (u) => way(u + k * u * (1 - u)),
        (u) => speed(u + k * u * (1 - u)) * (1 + k * (1 - 2 * u)),
      ),
    ),
  );
}

/**
 * Value of a tabulated shape, by straight lines between its steps.
 *
 * @param table - `way` or `speed` of a shape [-]
 * @param time - share of the time gone, 0 to 1 [-]
 * @returns the value [-]
 *
 * Source: definition
 */
export function readShape(table: Float64Array, time: number): number {
  const place = time * steps;
  const left = Math.min(steps - 1, Math.floor(place));
  return table[left] + (place - left) * (table[left + 1] - table[left]);
}
