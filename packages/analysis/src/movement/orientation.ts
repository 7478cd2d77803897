/** A vector in the sensor's own axes. */
export type Vector = readonly [x: number, y: number, z: number];

/** A vector signal: one array per axis, all of one length. */
export type VectorSignal = readonly [x: Float64Array, y: Float64Array, z: Float64Array];

/** Two directions that span the plane in which the foot turns, both seen from the sensor. */
export interface TurningPlane {
  /** axis of the turn, unit length */
  readonly axis: Vector;
  /** up when the foot has the reference posture, unit length, at a right angle to the axis */
  readonly up: Vector;
  /** axis x up, unit length */
  readonly along: Vector;
}

/**
 * Product of two vectors that stands at right angles on both.
 *
 * @param a - first vector [any unit]
 * @param b - second vector [any unit]
 * @returns a x b [product of the units]
 *
 * Source: definition
 */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/**
 * Sum of the products of the components.
 *
 * @param a - first vector [any unit]
 * @param b - second vector [any unit]
 * @returns a . b [product of the units]
 *
 * Source: definition
 */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/**
 * The vector with its length made 1.
 *
 * @param a - any vector [any unit]
 * @returns unit vector; undefined when the length is 0 [-]
 *
 * Source: definition
 */
export function unit(a: Vector): Vector | undefined {
  const length = Math.hypot(a[0], a[1], a[2]);
  return length > 0 ? [a[0] / length, a[1] / length, a[2] / length] : undefined;
}

/**
 * Weighted mean of a vector signal.
 *
 * @param signal - the signal [any unit]
 * @param weights - one per sample, >= 0, some above 0 [-]
 * @returns the mean [unit of signal]
 *
 * Source: definition
 */
export function weightedMean(signal: VectorSignal, weights: Float64Array): Vector {
  let total = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i];
    total += weight;
    x += weight * signal[0][i];
    y += weight * signal[1][i];
    z += weight * signal[2][i];
  }
  return [x / total, y / total, z / total];
}

/**
 * Direction along which a vector signal spreads most about a centre.
 *
 * @param signal - the signal [any unit]
 * @param weights - one per sample, >= 0 [-]
 * @param centre - where spread is counted from [unit of signal]
 * @param across - the direction is looked for at a right angle to this unit vector; anywhere when left out [-]
 * @returns unit vector of either sign; undefined when nothing spreads [-]
 *
 * Source: Pearson (1901), Phil Mag 2:559-572 (principal axis)
 */
export function principalAxis(
  signal: VectorSignal,
  weights: Float64Array,
  centre: Vector,
  across: Vector = [0, 0, 0],
): Vector | undefined {
  let xx = 0;
  let xy = 0;
  let xz = 0;
  let yy = 0;
  let yz = 0;
  let zz = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i];
    if (weight === 0) continue;
    let x = signal[0][i] - centre[0];
    let y = signal[1][i] - centre[1];
    let z = signal[2][i] - centre[2];
    const off = x * across[0] + y * across[1] + z * across[2];
    x -= off * across[0];
    y -= off * across[1];
    z -= off * across[2];
    xx += weight * x * x;
    xy += weight * x * y;
    xz += weight * x * z;
    yy += weight * y * y;
    yz += weight * y * z;
    zz += weight * z * z;
  }
  const trace = xx + yy + zz;
  if (!(trace > 0)) return undefined;
  return leadingEigenvector([
    [xx / trace, xy / trace, xz / trace],
    [xy / trace, yy / trace, yz / trace],
    [xz / trace, yz / trace, zz / trace],
  ]);
}

/** Eigenvector of the greatest eigenvalue of a symmetric matrix: squaring it again and again leaves that direction. */
function leadingEigenvector(matrix: readonly Vector[]): Vector | undefined {
  let power = matrix;
  for (let step = 0; step < 40; step++) {
    const squared = power.map((row) => power.map((column) => dot(row, column)) as unknown as Vector);
    const trace = squared[0][0] + squared[1][1] + squared[2][2];
    power = squared.map((row) => [row[0] / trace, row[1] / trace, row[2] / trace]);
  }
  const longest = power.reduce((best, row) => (dot(row, row) > dot(best, best) ? row : best));
  return unit(longest);
}

/**
 * The plane in which the foot turns, from the axis and the posture taken as reference.
 *
 * @param axis - axis of the turn, unit length [-]
 * @param reference - mean specific force in the reference posture, not along the axis [m/s2]
 * @returns directions of the plane; undefined when the reference lies along the axis [-]
 *
 * Source: definition
 */
export function turningPlane(axis: Vector, reference: Vector): TurningPlane | undefined {
  const along = unit(cross(axis, reference));
  return along === undefined ? undefined : { axis, along, up: cross(along, axis) };
}

/**
 * Angle by which the foot has turned about the axis since the reference posture, from the direction of the specific
 * force within the plane; the jump from pi to -pi lies opposite the reference.
 *
 * @param force - specific force in the sensor's axes [m/s2]
 * @param plane - plane of the turn [-]
 * @returns angle, -pi to pi [rad]
 *
 * Source: definition (four-quadrant arctangent of the two components)
 */
export function tiltInPlane(force: VectorSignal, plane: TurningPlane): Float64Array {
  const { along, up } = plane;
  const [x, y, z] = force;
  const tilt = new Float64Array(x.length);
  for (let i = 0; i < tilt.length; i++) {
    tilt[i] = Math.atan2(
      x[i] * along[0] + y[i] * along[1] + z[i] * along[2],
      x[i] * up[0] + y[i] * up[1] + z[i] * up[2],
    );
  }
  return tilt;
}

/**
 * Component of a vector signal along a direction.
 *
 * @param signal - the signal [any unit]
 * @param direction - unit vector [-]
 * @returns the component at each sample [unit of signal]
 *
 * Source: definition
 */
export function componentAlong(signal: VectorSignal, direction: Vector): Float64Array {
  const [x, y, z] = signal;
  return Float64Array.from(x, (value, i) => value * direction[0] + y[i] * direction[1] + z[i] * direction[2]);
}
