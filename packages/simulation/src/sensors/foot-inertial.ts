import { firstDerivative, secondDerivative } from '../derivatives.ts';
import { standardGravity } from '../gravity.ts';
import type { World } from '../world.ts';
import type { IdealInertial } from './inertial.ts';

/** A hit of the heel shakes the foot more than the body [-]; ours. */
const footHitShare = 3;

/** Place of the sensor on the foot, from the metatarsal heads. */
export interface FootPlace {
  /** towards the heel, along the foot line [m] */
  readonly behindM: number;
  /** above the foot line [m] */
  readonly aboveM: number;
}

/**
 * Perfect readings of an inertial sensor fixed to the foot, in the axes of the foot (to the toes, left, up).
 *
 * The place of the sensor follows from pivot and pitch; its acceleration is the second derivative of that place, so the
 * accelerations of the lever arm are in it.
 *
 * @param world - foot on a fine grid [SI]
 * @param place - where on the foot [m]
 * @param gyroscope - whether angular velocity is measured [-]
 * @returns specific force and angular velocity [m/s2, rad/s]
 *
 * Source: kinematics of a rigid body; specific force = acceleration - gravity
 */
export function footInertial(world: World, place: FootPlace, gyroscope: boolean): IdealInertial {
  const { pitchRad, sampleRateHz, count } = world;
  const forwardM = new Float64Array(count);
  const upM = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const cos = Math.cos(pitchRad[i]);
    const sin = Math.sin(pitchRad[i]);
    forwardM[i] = world.forwardM[i] - place.behindM * cos + place.aboveM * sin;
    upM[i] = world.upM[i] + place.behindM * sin + place.aboveM * cos;
  }
  const forward = secondDerivative(forwardM, sampleRateHz);
  const up = secondDerivative(upM, sampleRateHz);
  const toToes = new Float64Array(count);
  const fromSole = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const cos = Math.cos(pitchRad[i]);
    const sin = Math.sin(pitchRad[i]);
    const vertical = up[i] + footHitShare * world.hit[i] + standardGravity;
    toToes[i] = forward[i] * cos - vertical * sin;
    fromSole[i] = forward[i] * sin + vertical * cos;
  }
  const still = new Float64Array(count);
  const force = [toToes, still, fromSole] as const;
  if (!gyroscope) return { force };
  return { force, turn: [still, firstDerivative(pitchRad, sampleRateHz), still] };
}
