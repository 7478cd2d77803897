import type { FaultAmounts } from '../fault-table.ts';
import type { Random } from '../random.ts';
import { drawRotation, rotate } from '../rotation.ts';
import { addSpikes, addWhite, convert, drawSampleTimes, sampleAt } from '../sampling.ts';
import { type MoveShape, wayGone } from '../smooth-move.ts';
import { type SimulatedTrace, vectorChannels } from '../trace.ts';
import type { World } from '../world.ts';

/** What an inertial sensor would read if it were perfect, in the axes of the part of the body it sits on. */
export interface IdealInertial {
  /** specific force: forward, left, up [m/s2] */
  readonly force: readonly [Float64Array, Float64Array, Float64Array];
  /** angular velocity about the same axes; left out when there is no gyroscope [rad/s] */
  readonly turn?: readonly [Float64Array, Float64Array, Float64Array];
}

/** A slip: the sensor turns by this angle about the axis to the left, from this instant on, and stays turned. */
export interface Slip {
  readonly atS: number;
  readonly angleRad: number;
}

/** Time that a slip takes: a strap gives way at once [s]; ours. */
const slipLastsS = 0.1;

const slide: MoveShape = { kind: 'minimum-jerk', skew: 0, share: 0 };

/** How far a sensor has slipped by an instant [rad]. */
function slippedRad(slip: Slip | undefined, timeS: number): number {
  return slip === undefined ? 0 : slip.angleRad * wayGone(slide, (timeS - slip.atS) / slipLastsS);
}

/** How fast it slips, over a millisecond around that instant [rad/s]. */
function slipRate(slip: Slip | undefined, timeS: number): number {
  const halfS = 0.0005;
  return (slippedRad(slip, timeS + halfS) - slippedRad(slip, timeS - halfS)) / (2 * halfS);
}

/** Range of the gyroscope, each way: 500 degrees a second [rad/s]. */
const gyroscopeRange = (500 * Math.PI) / 180;

function sampleVector(
  signals: readonly Float64Array[],
  world: World,
  timesS: Float64Array,
): [Float64Array, Float64Array, Float64Array] {
  return [
    sampleAt(signals[0], world, timesS),
    sampleAt(signals[1], world, timesS),
    sampleAt(signals[2], world, timesS),
  ];
}

/**
 * Trace of an inertial sensor in any mounting.
 *
 * @param ideal - readings in the axes of the body part [m/s2, rad/s]
 * @param world - gives the grid [Hz]
 * @param faults - amounts of noise, bias, range, loss and so on [unit of the row]
 * @param slip - when and how far the sensor turns; undefined for never [s, rad]
 * @param rates - least and greatest sampling rate [Hz]
 * @param random - stream to draw from [-]
 * @returns trace with acceleration and, if there is a gyroscope, angular velocity [m/s2, rad/s]
 *
 * Source: definition of specific force; faults are ours
 */
export function inertialTrace(
  ideal: IdealInertial,
  world: World,
  faults: FaultAmounts,
  slip: Slip | undefined,
  rates: readonly [number, number],
  random: Random,
): SimulatedTrace {
  const mounting = drawRotation(random);
  const times = drawSampleTimes(world.count / world.sampleRateHz, random.between(rates[0], rates[1]), faults, random);
  const whiteSd = Math.sqrt(times.sampleRateHz / 2);
  const turned = (
    vector: readonly Float64Array[],
    own: (timeS: number) => number = () => 0,
  ): [Float64Array, Float64Array, Float64Array] => {
    const [x, y, z] = sampleVector(vector, world, times.trueS);
    for (let i = 0; i < x.length; i++) {
      const b = y[i] + own(times.trueS[i]);
      let [a, c] = [x[i], z[i]];
      const angle = slippedRad(slip, times.trueS[i]);
      if (angle !== 0) {
        const cos = Math.cos(angle);
        const sin = Math.sin(angle);
        [a, c] = [a * cos - c * sin, a * sin + c * cos];
      }
      [x[i], y[i], z[i]] = rotate(mounting, a, b, c);
    }
    return [x, y, z];
  };
  const force = turned(ideal.force);
  for (const samples of force) {
    const offset = faults.accelerometerOffset * random.boundedGaussian();
    for (let i = 0; i < samples.length; i++) samples[i] = samples[i] + offset;
    addWhite(samples, faults.accelerometerNoise * whiteSd, random);
  }
  addSpikes(force, times.stampS, faults.spikesPerMinute, faults.accelerometerRange / 2, random);
  for (const samples of force) {
    convert(samples, -faults.accelerometerRange, faults.accelerometerRange, faults.resolutionBits);
  }
  const channels = vectorChannels('acceleration', force);
  if (ideal.turn !== undefined) {
    // a gyroscope feels its own slip
    const turn = turned(ideal.turn, (timeS) => slipRate(slip, timeS));
    for (const samples of turn) {
      const bias = faults.gyroscopeBias * random.boundedGaussian();
      const drift = (faults.gyroscopeDrift * random.boundedGaussian()) / 60;
      for (let i = 0; i < samples.length; i++) samples[i] = samples[i] + bias + drift * times.trueS[i];
      addWhite(samples, faults.gyroscopeNoise * whiteSd, random);
    }
    addSpikes(turn, times.stampS, faults.spikesPerMinute, gyroscopeRange / 2, random);
    for (const samples of turn) convert(samples, -gyroscopeRange, gyroscopeRange, faults.resolutionBits);
    channels.push(...vectorChannels('angular-velocity', turn));
  }
  return { groups: [{ timesS: times.stampS, channels }] };
}
