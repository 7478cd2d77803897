import type { FootLever } from '../../packages/simulation/src/foot-lever.ts';
import { bodyRise, heelHeight } from '../../packages/simulation/src/foot-lever.ts';
import type { World } from '../../packages/simulation/src/world.ts';

/** A foot of 26 cm. */
export const foot26: FootLever = {
  heelLeverM: 0.186,
  ankleLeverM: Math.hypot(0.13, 0.07),
  ankleAngleRad: Math.atan2(0.07, 0.13),
  restPitchRad: 0,
  pivotMigration: 0,
};

/** A world in which only the foot's pitch changes, as a function of time; nothing else happens. */
export function worldOfPitch(lengthS: number, pitchAt: (timeS: number) => number, foot = foot26): World {
  const sampleRateHz = 500;
  const count = Math.round(lengthS * sampleRateHz);
  const zeros = (): Float64Array => new Float64Array(count);
  const pitchRad = Float64Array.from({ length: count }, (_, i) => pitchAt(i / sampleRateHz));
  return {
    sampleRateHz,
    count,
    pitchRad,
    forwardM: zeros(),
    upM: zeros(),
    pullM: zeros(),
    heelM: pitchRad.map((pitch) => heelHeight(foot, pitch)),
    bodyM: pitchRad.map((pitch) => bodyRise(foot, pitch)),
    trunkForward: zeros(),
    trunkPitchRad: zeros(),
    hit: zeros(),
    load: new Float64Array(count).fill(1),
  };
}

/** From 0 to `size` and back in every cycle, as a cosine. */
export function cosineCycles(size: number, cycleS: number): (timeS: number) => number {
  return (timeS) => (size * (1 - Math.cos((2 * Math.PI * timeS) / cycleS))) / 2;
}
