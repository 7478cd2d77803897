import { requireRange } from '../check.ts';

/** A figure with its standard uncertainty. */
export interface Uncertain {
  readonly value: number;
  readonly u: number;
}

/**
 * Work against gravity of lifting a mass: mass times gravity times height.
 *
 * @param massKg - mass that is lifted, body and external, > 0 [kg]
 * @param massUKg - its standard uncertainty, >= 0 [kg]
 * @param height - height or rise with its standard uncertainty [m]
 * @param gravityMps2 - acceleration of gravity, > 0 [m/s2]
 * @returns work with its standard uncertainty [J]
 * @throws {@link InputError} `out-of-range` for mass or gravity
 *
 * Source: Silbernagel (2010), Knee Surg Sports Traumatol Arthrosc 18:258-264 (body weight times summed height of the rises)
 */
export function liftingWork(massKg: number, massUKg: number, height: Uncertain, gravityMps2: number): Uncertain {
  requireRange(massKg, massKg > 0, 'massKg', '> 0');
  requireRange(gravityMps2, gravityMps2 > 0, 'gravityMps2', '> 0');
  const value = massKg * gravityMps2 * height.value;
  return { value, u: gravityMps2 * Math.hypot(massKg * height.u, massUKg * height.value) };
}

/** The foot as a lever about the metatarsal heads. */
export interface FootGeometry {
  /** metatarsal heads to the point of the heel [m] */
  readonly heelLeverM: number;
  /** metatarsal heads to the ankle axis [m] */
  readonly ankleLeverM: number;
  /** elevation of the line to the ankle axis above the line to the heel [rad] */
  readonly ankleAngleRad: number;
  /** elevation of the line to the heel at rest: 0 on the floor, negative with the toes up [rad] */
  readonly restElevationRad: number;
}

/**
 * Rise of the ankle axis when the heel rises by a given height and the foot turns as a rigid lever about the metatarsal
 * heads: the rise of the body above the ankle if it moves as one.
 *
 * @param height - height of the heel above rest, with its standard uncertainty [m]
 * @param geometry - see {@link FootGeometry} [-]
 * @param modelRelativeU - relative standard uncertainty of the model itself, >= 0 [-]
 * @returns rise with its standard uncertainty; undefined when the heel cannot be that high on this lever [m]
 *
 * Source: ours (planar lever); the ratio to heel height falls from 0.65 at 15 degrees to 0.54 at 45 degrees
 */
export function ankleRise(height: Uncertain, geometry: FootGeometry, modelRelativeU: number): Uncertain | undefined {
  const { heelLeverM, ankleLeverM, ankleAngleRad, restElevationRad } = geometry;
  // h = L (sin phi - sin phi0)
  const sine = height.value / heelLeverM + Math.sin(restElevationRad);
  if (!(Math.abs(sine) < 1)) return undefined;
  const elevation = Math.asin(sine);
  // dz = R (sin(phi + beta) - sin(phi0 + beta))
  const value = ankleLeverM * (Math.sin(elevation + ankleAngleRad) - Math.sin(restElevationRad + ankleAngleRad));
  // d(dz)/dh = R cos(phi + beta) / (L cos phi)
  const slope = (ankleLeverM * Math.cos(elevation + ankleAngleRad)) / (heelLeverM * Math.cos(elevation));
  return { value, u: Math.hypot(slope * height.u, modelRelativeU * value) };
}

/**
 * Positive work of a force along a movement: integral of force times velocity where their product is positive.
 *
 * @param force - vertical force on a regular grid [N]
 * @param velocity - upward velocity on the same grid [m/s]
 * @param fromIndex - first sample [-]
 * @param toIndex - one past the last sample [-]
 * @param sampleRateHz - samples per second, > 0 [Hz]
 * @returns work; undefined when a sample in the range is missing or fewer than two are in it [J]
 *
 * Source: definition (trapezoid)
 */
export function positiveWork(
  force: Float64Array,
  velocity: Float64Array,
  fromIndex: number,
  toIndex: number,
  sampleRateHz: number,
): number | undefined {
  if (toIndex - fromIndex < 2) return undefined;
  let sum = 0;
  for (let i = fromIndex + 1; i < toIndex; i++) {
    const before = Math.max(0, force[i - 1] * velocity[i - 1]);
    const here = Math.max(0, force[i] * velocity[i]);
    sum += (before + here) / 2;
  }
  const work = sum / sampleRateHz;
  return Number.isFinite(work) ? work : undefined;
}
