/** A foot that turns about the heads of the metatarsals, and what stands on it. */
export interface FootLever {
  /** metatarsal heads to heel [m] */
  readonly heelLeverM: number;
  /** metatarsal heads to ankle axis [m] */
  readonly ankleLeverM: number;
  /** angle of that line above the line of the foot [rad] */
  readonly ankleAngleRad: number;
  /** elevation of the foot line at rest: 0 on the floor, negative toes-up on an incline [rad] */
  readonly restPitchRad: number;
  /** share by which the lever grows as the pivot moves towards the toes, at 35 degrees above rest [-] */
  readonly pivotMigration: number;
}

const migrationPitchRad = (35 * Math.PI) / 180;

/**
 * Height of the heel above its level at rest.
 *
 * @param foot - lever lengths and rest angle [m, rad]
 * @param pitchRad - elevation of the line from the metatarsal heads to the heel [rad]
 * @returns heel height [m]
 *
 * Source: lever geometry, h = L (sin phi - sin phi0); growth of L with pitch is ours
 */
export function heelHeight(foot: FootLever, pitchRad: number): number {
  const grown = 1 + (foot.pivotMigration * (pitchRad - foot.restPitchRad)) / migrationPitchRad;
  return foot.heelLeverM * grown * (Math.sin(pitchRad) - Math.sin(foot.restPitchRad));
}

/**
 * Rise of the ankle, and of the body above it when hips and knees keep their angles.
 *
 * @param foot - lever lengths and rest angle [m, rad]
 * @param pitchRad - elevation of the foot line [rad]
 * @returns rise above the level at rest [m]
 *
 * Source: lever geometry, dz = R (sin(phi + beta) - sin(phi0 + beta))
 */
export function bodyRise(foot: FootLever, pitchRad: number): number {
  const { ankleLeverM, ankleAngleRad, restPitchRad } = foot;
  return ankleLeverM * (Math.sin(pitchRad + ankleAngleRad) - Math.sin(restPitchRad + ankleAngleRad));
}

/**
 * Horizontal distance of the ankle axis behind the metatarsal heads: the lever of the ground force.
 *
 * @param foot - lever lengths [m, rad]
 * @param pitchRad - elevation of the foot line [rad]
 * @returns lever [m]
 *
 * Source: lever geometry, x = R cos(phi + beta)
 */
export function ankleMomentArm(foot: FootLever, pitchRad: number): number {
  return foot.ankleLeverM * Math.cos(pitchRad + foot.ankleAngleRad);
}

/**
 * Way the heel travels forward as it rises.
 *
 * @param foot - lever lengths [m, rad]
 * @param pitchRad - elevation of the foot line [rad]
 * @returns forward travel from the place at rest [m]
 *
 * Source: lever geometry, d = L (cos phi0 - cos phi)
 */
export function heelTravel(foot: FootLever, pitchRad: number): number {
  return foot.heelLeverM * (Math.cos(foot.restPitchRad) - Math.cos(pitchRad));
}
