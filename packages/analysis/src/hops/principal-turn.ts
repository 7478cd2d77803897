/**
 * Angular velocity about the axis that a sensor turns about most, whichever way it is mounted: the first principal axis of
 * its three readings. The share tells how much of all turning is not about that axis.
 *
 * @param turn - three axes, same length, n >= 1 [rad/s]
 * @returns the turn about the axis, its sign arbitrary, and the share of the rest, 0 to 2/3 [rad/s, -]
 *
 * Source: definition (power iteration on the second moments)
 */
export function principalTurn(turn: readonly Float64Array[]): {
  readonly rateRadps: Float64Array;
  readonly restShare: number;
} {
  const moment = (a: number, b: number): number => turn[a].reduce((sum, value, i) => sum + value * turn[b][i], 0);
  const matrix = [0, 1, 2].map((a) => [0, 1, 2].map((b) => moment(a, b)));
  const total = matrix[0][0] + matrix[1][1] + matrix[2][2];
  if (!(total > 0)) return { rateRadps: new Float64Array(turn[0].length), restShare: 0 };
  // the column of the largest moment cannot be at right angles to the axis
  const start = [0, 1, 2].reduce((best, a) => (matrix[a][a] > matrix[best][best] ? a : best), 0);
  let axis = matrix.map((row) => row[start]);
  for (let round = 0; round < 200; round++) {
    const next = matrix.map((row) => row[0] * axis[0] + row[1] * axis[1] + row[2] * axis[2]);
    const size = Math.hypot(...next);
    axis = next.map((value) => value / size);
  }
  const along = matrix.reduce(
    (sum, row, a) => sum + axis[a] * (row[0] * axis[0] + row[1] * axis[1] + row[2] * axis[2]),
    0,
  );
  const rateRadps = turn[0].map((value, i) => value * axis[0] + turn[1][i] * axis[1] + turn[2][i] * axis[2]);
  return { rateRadps, restShare: Math.max(0, 1 - along / total) };
}
