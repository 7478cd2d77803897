import { secondDerivative } from '../derivatives.ts';
import type { FaultAmounts } from '../fault-table.ts';
import { standardGravity } from '../gravity.ts';
import { lowPassNoise } from '../noise.ts';
import type { Random } from '../random.ts';
import { addSpikes, addWhite, convert, drawSampleTimes, sampleAt } from '../sampling.ts';
import type { SimulatedTrace } from '../trace.ts';
import type { World } from '../world.ts';

/** Range of the platform [N]. */
const rangeN = 2500;

/**
 * Vertical force of a body on a platform, without the errors of the platform.
 *
 * @param world - body on a fine grid [SI]
 * @param bodyMassKg - body mass [kg]
 * @param wobble - acceleration of the body besides the heel raises, on the same grid [m/s2]
 * @returns force, F = load m (g + a), never below 0: feet do not pull [N]
 *
 * Source: Newton's second law
 */
export function groundForce(world: World, bodyMassKg: number, wobble: Float64Array): Float64Array {
  const acceleration = secondDerivative(world.bodyM, world.sampleRateHz);
  return acceleration.map((value, i) =>
    Math.max(0, world.load[i] * bodyMassKg * (standardGravity + value + world.hit[i] + wobble[i])),
  );
}

/**
 * Trace of a force platform under the whole foot.
 *
 * @param world - body on a fine grid [SI]
 * @param bodyMassKg - body mass [kg]
 * @param faults - amounts of wobble, noise, offset, drift, loss and so on [unit of the row]
 * @param random - stream to draw from [-]
 * @returns trace with the vertical force [N]
 *
 * Source: Newton's second law; faults are ours
 */
export function platformTrace(world: World, bodyMassKg: number, faults: FaultAmounts, random: Random): SimulatedTrace {
  const wobble = lowPassNoise(world.count, world.sampleRateHz, faults.platformWobble, faults.wobbleCornerHz, random);
  const force = groundForce(world, bodyMassKg, wobble);
  const lengthS = world.count / world.sampleRateHz;
  const times = drawSampleTimes(lengthS, random.between(100, 400), faults, random);
  const samples = sampleAt(force, world, times.trueS);
  for (let i = 0; i < samples.length; i++) {
    samples[i] = samples[i] + faults.forceOffsetN + (faults.forceDriftN * times.trueS[i]) / 60;
  }
  addWhite(samples, faults.forceNoiseN, random);
  addSpikes([samples], times.stampS, faults.spikesPerMinute, 600, random);
  convert(samples, -rangeN / 10, rangeN, faults.resolutionBits);
  return { groups: [{ timesS: times.stampS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}
