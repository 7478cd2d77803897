import { readFileSync } from 'node:fs';
import type { Quantity } from '@surae/analysis';
import { readRecording } from '@surae/records';
import { heelDefaults } from '../../packages/analysis/src/assess/defaults/heel.ts';
import { findTrack, ontoGrid } from '../../packages/analysis/src/movement/heel-height-grid.ts';
import {
  componentAlong,
  principalAxis,
  tiltInPlane,
  turningPlane,
  type VectorSignal,
  weightedMean,
} from '../../packages/analysis/src/movement/orientation.ts';
import { fuseTiltAndRate } from '../../packages/analysis/src/movement/pitch-smoother.ts';
import { findBumps } from '../../packages/analysis/src/raises/heel/bumps.ts';
import { gridOver } from '../../packages/analysis/src/signal/grid.ts';
import { lowPassZeroPhase } from '../../packages/analysis/src/signal/lowpass.ts';
import { median } from '../../packages/analysis/src/signal/order-statistics.ts';

const FOLDER = new URL('../../fixtures/recordings/', import.meta.url);

/** A recording of the fixtures, read as the command line reads it. */
export function openRecording(name: string) {
  return readRecording(readFileSync(new URL(name, FOLDER)), { file: name });
}

/** The columns of a table of labels or optics, by name. */
export function openTable(name: string): Map<string, string[]> {
  const [header, ...rows] = readFileSync(new URL(name, FOLDER), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split(','));
  return new Map(header.map((column, index) => [column, rows.map((row) => row[index])]));
}

export function openNumbers(name: string, column: string): number[] {
  return openTable(name).get(column)!.map(Number);
}

/** Samples of one quantity of a recording that has a single clock. */
export function samplesOf(name: string, quantity: Quantity): Float64Array {
  return openRecording(name).groups[0].channels.find((channel) => channel.quantity === quantity)!.samples;
}

/** A vector signal of a recording on a regular grid. */
export function vectorOnGrid(name: string, quantity: Quantity, sampleRateHz: number): VectorSignal {
  const recording = openRecording(name);
  const track = findTrack(recording, quantity, ['x', 'y', 'z'])!;
  const [x, y, z] = ontoGrid(track, gridOver(recording.groups[0].timesS, sampleRateHz));
  return [x, y, z];
}

/** How two series agree: root mean square of their difference, and the correlation. */
export interface Agreement {
  readonly count: number;
  readonly rmse: number;
  readonly r: number;
}

export function agreement(ours: readonly number[], theirs: readonly number[]): Agreement {
  const count = ours.length;
  const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / count;
  const [oursMean, theirsMean] = [meanOf(ours), meanOf(theirs)];
  let squares = 0;
  let oursSpread = 0;
  let theirsSpread = 0;
  let together = 0;
  ours.forEach((value, index) => {
    const other = theirs[index];
    squares += (value - other) ** 2;
    oursSpread += (value - oursMean) ** 2;
    theirsSpread += (other - theirsMean) ** 2;
    together += (value - oursMean) * (other - theirsMean);
  });
  return { count, rmse: Math.sqrt(squares / count), r: together / Math.sqrt(oursSpread * theirsSpread) };
}

export interface WalkingFigures {
  readonly flatPhases: number;
  readonly pitchDeg: Agreement;
  readonly heightMm: Agreement;
}

const RATE_HZ = 100; // of the optics
const FLAT_M = 0.006;
const FOREFOOT_DOWN_M = 0.01;

/** Pitch about the axis that the shoe turns about most, by the analysis' own fusion; the first second is standing. */
function shoePitch(side: 'left' | 'right', withGyroscope: boolean): Float64Array {
  const { movementCutoffHz, tiltSdRad, tiltSdPerExcess, driftSdRad } = heelDefaults.pitch;
  const smoothed = (quantity: Quantity): VectorSignal => {
    const [x, y, z] = vectorOnGrid(`walking-foot/${side}-imu.csv`, quantity, RATE_HZ);
    const smooth = (signal: Float64Array): Float64Array => lowPassZeroPhase(signal, RATE_HZ, movementCutoffHz);
    return [smooth(x), smooth(y), smooth(z)];
  };
  const force = smoothed('acceleration');
  const angular = smoothed('angular-velocity');
  const standing = force[0].map((_, i) => (i < RATE_HZ ? 1 : 0));
  const axis = principalAxis(angular, new Float64Array(standing.length).fill(1), [0, 0, 0])!;
  const tilt = tiltInPlane(force, turningPlane(axis, weightedMean(force, standing))!);
  if (!withGyroscope) return tilt;
  const gravity = median(force[0].subarray(0, RATE_HZ).map((x, i) => Math.hypot(x, force[1][i], force[2][i])));
  const noise = {
    tiltSdRad: force[0].map((x, i) =>
      Math.hypot(tiltSdRad, tiltSdPerExcess * (Math.hypot(x, force[1][i], force[2][i]) - gravity)),
    ),
    driftSdRad: force[0].map(() => driftSdRad),
  };
  // seen from the sensor, gravity turns against the sensor's own turn
  return fuseTiltAndRate(
    tilt,
    componentAlong(angular, axis).map((rate) => -rate),
    RATE_HZ,
    noise,
  );
}

/**
 * Foot pitch and heel height from the shoe sensor against optical markers, from one flat foot to the next. The optics say
 * when the foot is flat and when the forefoot is on the floor; both signals count from their own level while flat. Walking
 * does not show which way is heel up (toes rise as well), so the sense is taken from the optics.
 */
export function walkingAgainstOptics(side: 'left' | 'right', withGyroscope: boolean): WalkingFigures {
  const pitchRad = shoePitch(side, withGyroscope);
  const markers = `walking-foot/${side}-markers.csv`;
  const heelM = fromStanding(samplesOf(markers, 'heel-height'));
  const forefootM = fromStanding(
    Float64Array.from(openNumbers(`walking-foot/${side}-forefoot.csv`, 'height_mm'), (mm) => mm / 1000),
  );
  const opticalRad = samplesOf(markers, 'angle');
  const count = Math.min(heelM.length, pitchRad.length);
  const sense = Math.sign(agreement([...pitchRad.subarray(0, count)], [...opticalRad.subarray(0, count)]).r);
  const flat = flatPhases((i) => Math.abs(heelM[i]) < FLAT_M && Math.abs(forefootM[i]) < FLAT_M, count);
  const ours = fromFlat(
    pitchRad.map((value) => value * sense),
    flat,
  );
  const theirs = fromFlat(opticalRad, flat);
  const leverMm = openNumbers('walking-foot/levers.csv', 'heel_lever_mm')[side === 'left' ? 0 : 1];
  const pitch: [number[], number[]] = [[], []];
  const height: [number[], number[]] = [[], []];
  for (let i = flat[0].middle; i < flat.at(-1)!.middle; i += 1) {
    pitch[0].push((ours(i) * 180) / Math.PI);
    pitch[1].push((theirs(i) * 180) / Math.PI);
    if (forefootM[i] > FOREFOOT_DOWN_M) continue;
    height[0].push(leverMm * Math.sin(ours(i)));
    height[1].push(heelM[i] * 1000);
  }
  return { flatPhases: flat.length, pitchDeg: agreement(...pitch), heightMm: agreement(...height) };
}

/** A signal counted from its median in the first second, when the person stood still. */
function fromStanding(signal: Float64Array): Float64Array {
  const level = median(signal.subarray(0, RATE_HZ));
  return signal.map((value) => value - level);
}

interface Phase {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
}

/** Stretches of at least 80 ms in which a condition holds, short breaks of it passed over. */
function flatPhases(holds: (index: number) => boolean, count: number): Phase[] {
  const phases: Phase[] = [];
  let from: number | undefined;
  let last = -1;
  for (let i = 0; i <= count; i += 1) {
    if (from !== undefined && i - last > 5) {
      if (last - from >= 7) phases.push({ from, to: last + 1, middle: Math.round((from + last) / 2) });
      from = undefined;
    }
    if (i === count || !holds(i)) continue;
    from ??= i;
    last = i;
  }
  return phases;
}

/** A signal counted from a line through its medians in the flat phases. */
function fromFlat(signal: Float64Array, phases: readonly Phase[]): (index: number) => number {
  const levels = phases.map(({ from, to }) => median(signal.subarray(from, to)));
  return (index) => {
    let right = phases.findIndex(({ middle }) => middle > index);
    if (right === -1) right = phases.length - 1;
    const left = right - 1;
    const share = (index - phases[left].middle) / (phases[right].middle - phases[left].middle);
    return signal[index] - (levels[left] + share * (levels[right] - levels[left]));
  };
}

/** Height peaks of the marker at the heel in each hand-labelled stride: bumps of more than 50 mm, low-passed. */
export function peaksPerStride(side: 'left' | 'right'): number[] {
  const markers = `walking-foot/${side}-markers.csv`;
  const recording = openRecording(markers);
  const heightM = lowPassZeroPhase(samplesOf(markers, 'heel-height'), RATE_HZ, heelDefaults.bumpCutoffHz);
  const tops = findBumps(heightM, 0.05).map(({ topIndex }) => recording.groups[0].timesS[topIndex]);
  const strides = openTable('walking-foot/strides.csv');
  return strides.get('side')!.flatMap((foot, index) => {
    if (foot !== side) return [];
    const [fromS, toS] = [Number(strides.get('start_s')![index]), Number(strides.get('end_s')![index])];
    return [tops.filter((timeS) => timeS >= fromS && timeS < toS).length];
  });
}
