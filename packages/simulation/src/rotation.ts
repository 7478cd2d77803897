import type { Random } from './random.ts';

/** Three by three rotation, row after row. */
export type Rotation = readonly [number, number, number, number, number, number, number, number, number];

/**
 * A rotation drawn evenly from all rotations.
 *
 * @param random - stream to draw from [-]
 * @returns rotation matrix, row after row [-]
 *
 * Source: Shoemake (1992), Uniform random rotations, Graphics Gems III: normalised Gaussian quaternion
 */
export function drawRotation(random: Random): Rotation {
  const q = [random.gaussian(), random.gaussian(), random.gaussian(), random.gaussian()] as const;
  const size = Math.hypot(...q);
  const [w, x, y, z] = [q[0] / size, q[1] / size, q[2] / size, q[3] / size];
  return [
    1 - 2 * (y * y + z * z),
    2 * (x * y - w * z),
    2 * (x * z + w * y),
    2 * (x * y + w * z),
    1 - 2 * (x * x + z * z),
    2 * (y * z - w * x),
    2 * (x * z - w * y),
    2 * (y * z + w * x),
    1 - 2 * (x * x + y * y),
  ];
}

/**
 * A rotation applied to a vector.
 *
 * @param rotation - row after row [-]
 * @param x - first component [unit]
 * @param y - second component [unit]
 * @param z - third component [unit]
 * @returns turned vector [unit]
 *
 * Source: definition
 */
export function rotate(rotation: Rotation, x: number, y: number, z: number): [number, number, number] {
  return [
    rotation[0] * x + rotation[1] * y + rotation[2] * z,
    rotation[3] * x + rotation[4] * y + rotation[5] * z,
    rotation[6] * x + rotation[7] * y + rotation[8] * z,
  ];
}
