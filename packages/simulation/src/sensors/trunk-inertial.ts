import { secondDerivative } from '../derivatives.ts';
import type { FaultAmounts } from '../fault-table.ts';
import { standardGravity } from '../gravity.ts';
import { lowPassNoise } from '../noise.ts';
import type { Random } from '../random.ts';
import type { World } from '../world.ts';
import type { IdealInertial } from './inertial.ts';

/** Share of a heel hit that arrives at the trunk [-]; ours. */
const hitShare = 0.5;

/** Distance of the sensor behind the axis about which the pelvis tilts [m]; ours. */
const behindAxisM = 0.05;

/**
 * Perfect readings of an accelerometer at the sacrum, in the axes of the pelvis (forward, left, up).
 *
 * Vertical movement of the body, wobble of body and skin in all directions, tilt of the pelvis.
 *
 * @param world - body on a fine grid [SI]
 * @param faults - amount and corner of the wobble [unit of the row]
 * @param random - stream to draw from [-]
 * @returns specific force [m/s2]
 *
 * Source: definition of specific force; wobble is ours
 */
export function trunkInertial(world: World, faults: FaultAmounts, random: Random): IdealInertial {
  const { count, sampleRateHz, trunkPitchRad } = world;
  const wobble = (size: number): Float64Array =>
    lowPassNoise(count, sampleRateHz, size * faults.trunkWobble, faults.wobbleCornerHz, random);
  const [up, forward, left] = [wobble(1), wobble(0.8), wobble(0.8)];
  const vertical = secondDerivative(
    world.bodyM.map((rise, i) => rise - behindAxisM * Math.sin(trunkPitchRad[i])),
    sampleRateHz,
  );
  const along = new Float64Array(count);
  const across = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const cos = Math.cos(trunkPitchRad[i]);
    const sin = Math.sin(trunkPitchRad[i]);
    const z = vertical[i] + hitShare * world.hit[i] + up[i] + standardGravity;
    const x = forward[i] + world.trunkForward[i];
    along[i] = x * cos - z * sin;
    across[i] = x * sin + z * cos;
  }
  return { force: [along, left, across] };
}
