import type { FaultAmounts } from '../fault-table.ts';
import { type FootLever, heelTravel } from '../foot-lever.ts';
import type { Random } from '../random.ts';
import { addSpikes, addWhite, convert, drawSampleTimes, sampleAt } from '../sampling.ts';
import type { SimulatedTrace } from '../trace.ts';
import type { World } from '../world.ts';

/**
 * Way that a string from the floor to the heel is drawn out: more than the height, because the heel also travels forward.
 *
 * @param heightM - height of the heel [m]
 * @param travelM - forward travel of the heel [m]
 * @param restLengthM - length of the string at rest [m]
 * @returns reading [m]
 *
 * Source: Pythagoras, sqrt((h0 + h)^2 + d^2) - h0
 */
export function stringReading(heightM: number, travelM: number, restLengthM: number): number {
  return Math.hypot(restLengthM + heightM, travelM) - restLengthM;
}

/** The range of the string is a quarter below rest and the rest above. */
const rangeM = 0.5;

/**
 * Trace of a string displacement sensor at the heel.
 *
 * @param world - foot on a fine grid [SI]
 * @param foot - lever, for the forward travel [m, rad]
 * @param restLengthM - length of the string at rest [m]
 * @param faults - amounts of noise, drift, slip, loss and so on [unit of the row]
 * @param slipAtS - instant at which the string shifts; undefined for never [s]
 * @param random - stream to draw from [-]
 * @returns trace with one channel, heel height as the string reads it [m]
 *
 * Source: lever geometry; faults are ours
 */
export function heelStringTrace(
  world: World,
  foot: FootLever,
  restLengthM: number,
  faults: FaultAmounts,
  slipAtS: number | undefined,
  random: Random,
): SimulatedTrace {
  const reading = world.heelM.map((height, i) =>
    stringReading(height, heelTravel(foot, world.pitchRad[i]) + world.forwardM[i], restLengthM),
  );
  for (let i = 0; i < reading.length; i++) reading[i] = reading[i] + world.pullM[i];
  const lengthS = world.count / world.sampleRateHz;
  const times = drawSampleTimes(lengthS, random.between(50, 200), faults, random);
  const samples = sampleAt(reading, world, times.trueS);
  const slip = faults.slipM * (random.chance(0.5) ? 1 : -1);
  for (let i = 0; i < samples.length; i++) {
    const timeS = times.trueS[i];
    samples[i] =
      samples[i] + (faults.stringDriftM * timeS) / 60 + (slipAtS !== undefined && timeS >= slipAtS ? slip : 0);
  }
  addWhite(samples, faults.stringNoiseM, random);
  addSpikes([samples], times.stampS, faults.spikesPerMinute, 0.1, random);
  convert(samples, -rangeM / 4, (3 * rangeM) / 4, faults.resolutionBits);
  return { groups: [{ timesS: times.stampS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] };
}
