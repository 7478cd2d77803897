import { derivative } from '../signal/derivative.ts';
import { lowPassZeroPhase } from '../signal/lowpass.ts';
import { median } from '../signal/order-statistics.ts';
import { type SensorPlace, shownTilt, tiltWithoutLeverArm, verticalAcceleration } from './lever-arm.ts';
import { type BehindEstimate, type BehindPrior, estimateBehind } from './lever-arm-estimate.ts';
import {
  componentAlong,
  cross,
  dot,
  principalAxis,
  tiltInPlane,
  turningPlane,
  unit,
  type Vector,
  type VectorSignal,
  weightedMean,
} from './orientation.ts';
import { type RestRule, restEvidence } from './pitch-rest.ts';
import { findSlips, type Slip, type SlipRule, withoutSlips } from './pitch-slip.ts';
import { fuseTiltAndRate } from './pitch-smoother.ts';
import { slidingRange } from './still-runs.ts';

export interface PitchSettings {
  /** low-pass of the specific force and of the angular velocity [Hz] */
  readonly movementCutoffHz: number;
  /** low-pass for the estimates of sense and sensor place [Hz] */
  readonly tempoCutoffHz: number;
  /** where sensors usually sit, and the vertical acceleration left over */
  readonly sensorPlace: BehindPrior;
  /** noise of the tilt while still, with what an unseen sway of the foot adds [rad] */
  readonly tiltSdRad: number;
  /** what each m/s2 of departure from gravity adds to that [rad.s2/m] */
  readonly tiltSdPerExcess: number;
  /** wandering of the integrated angular velocity in one second [rad] */
  readonly driftSdRad: number;
  /** shaking beyond this within the window makes a sample count little for axis, sense and sensor place [s], [m/s2] */
  readonly shakeWindowS: number;
  readonly shakeAcceleration: number;
  /** rounds in which sensor place and pitch are found in turn [-] */
  readonly leverRounds: number;
  /** least agreement of the two sensors before the gyroscope is believed [-] */
  readonly leastAgreement: number;
  /** how a slip of the sensor is recognised */
  readonly slip: SlipRule;
  /** how rest is recognised */
  readonly rest: RestRule;
}

/** How the foot turned, with heel up positive and about 0 at rest. */
export interface FootPitch {
  readonly pitchRad: Float64Array;
  /** magnitude of the specific force minus gravity, low-passed [m/s2] */
  readonly excess: Float64Array;
  /** the part of it that turning about the metatarsal heads does not explain [m/s2] */
  readonly unexplained: Float64Array;
  /** true when no usable angular velocity was there */
  readonly accelerometerOnly: boolean;
  readonly place: SensorPlace;
  /** turns of the sensor against the foot, already taken out of the pitch */
  readonly slips: readonly Slip[];
}

interface Turn {
  readonly tilt: Float64Array;
  readonly rate: Float64Array | undefined;
  readonly axis: Vector;
}

/** Axis from the way gravity moves, tilt about it, and the angular velocity about it where one is believable. */
function findTurn(
  force: VectorSignal,
  angular: VectorSignal | undefined,
  weights: Float64Array,
  sampleRateHz: number,
  settings: PitchSettings,
): Turn | undefined {
  const centre = weightedMean(force, weights);
  // Across gravity: along it a quick raise only makes the sensor heavier and lighter.
  const spread = principalAxis(force, weights, centre, unit(centre));
  const ownAxis = spread === undefined ? undefined : unit(cross(centre, spread));
  if (ownAxis === undefined) return undefined;
  const ownPlane = turningPlane(ownAxis, centre);
  if (ownPlane === undefined) return undefined;
  const own = { tilt: tiltInPlane(force, ownPlane), rate: undefined, axis: ownAxis };
  if (angular === undefined) return own;
  const turnAxis = principalAxis(angular, weights, [0, 0, 0]);
  if (turnAxis === undefined) return own;
  const rate = componentAlong(angular, turnAxis);
  const slow = (signal: Float64Array): Float64Array => lowPassZeroPhase(signal, sampleRateHz, settings.tempoCutoffHz);
  const agreement = correlation(derivative(slow(own.tilt), sampleRateHz), slow(rate), weights);
  if (Math.abs(agreement) < settings.leastAgreement) return own;
  // The sense comes from the agreement, never from the axes: a left-handed sensor is none the worse for it.
  const sense = Math.sign(agreement);
  const sensed = rate.map((value) => value * sense);
  const together = dot(ownAxis, turnAxis);
  const plane = Math.abs(together) > 0.9 ? turningPlane(scaled(turnAxis, Math.sign(together)), centre) : undefined;
  return plane === undefined
    ? { ...own, rate: sensed }
    : { tilt: tiltInPlane(force, plane), rate: sensed, axis: plane.axis };
}

function scaled(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

function correlation(a: Float64Array, b: Float64Array, weights: Float64Array): number {
  let aa = 0;
  let ab = 0;
  let bb = 0;
  for (let i = 0; i < a.length; i++) {
    aa += weights[i] * a[i] * a[i];
    ab += weights[i] * a[i] * b[i];
    bb += weights[i] * b[i] * b[i];
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/** Length of the gap that each sample lies in, 0 outside of gaps [s]. */
function gapLengths(known: Float64Array, sampleRateHz: number): Float64Array {
  const lengths = new Float64Array(known.length);
  for (let i = 0; i < known.length; i++) {
    if (known[i] > 0) continue;
    let end = i;
    while (end < known.length && known[end] === 0) end++;
    lengths.fill((end - i + 1) / sampleRateHz, i, end);
    i = end;
  }
  return lengths;
}

/**
 * Tilt minus the integrated rate. In gaps and violent shakes, where the rate is not known or may have met its range, the
 * difference stands still.
 */
function differenceOf(
  tilt: Float64Array,
  rate: Float64Array,
  trusted: Float64Array,
  sampleRateHz: number,
): Float64Array {
  const least = 0.05 * median(trusted);
  let turned = 0;
  return tilt.map((angle, i) => {
    if (i > 0) turned += trusted[i] > least ? (rate[i] + rate[i - 1]) / 2 / sampleRateHz : angle - tilt[i - 1];
    return angle - turned;
  });
}

/** Angular velocity without the constant that would carry its integral away from the tilt. */
function withoutOffset(
  rate: Float64Array,
  tilt: Float64Array,
  weights: Float64Array,
  trusted: Float64Array,
  sampleRateHz: number,
): Float64Array {
  const difference = differenceOf(tilt, rate, trusted, sampleRateHz);
  let [total, timeMean, mean] = [0, 0, 0];
  for (let i = 0; i < rate.length; i++) {
    total += weights[i];
    timeMean += weights[i] * i;
    mean += weights[i] * difference[i];
  }
  timeMean /= total;
  mean /= total;
  let [xx, xy] = [0, 0];
  for (let i = 0; i < rate.length; i++) {
    xx += weights[i] * (i - timeMean) ** 2;
    xy += weights[i] * (i - timeMean) * (difference[i] - mean);
  }
  const offset = xx > 0 ? -(xy / xx) * sampleRateHz : 0;
  return rate.map((value) => value - offset);
}

/**
 * Pitch of a foot that a sensor of any mounting rides on: heel up positive, zero at rest.
 *
 * The axis is the one about which gravity (and the angular velocity, if there) turns most. Which way is up follows from
 * two physical facts weighed together: a foot that rests can only go up from there, and a sensor behind the metatarsal
 * heads is lifted when the heel rises. The acceleration of the sensor on its lever is taken out of the tilt.
 *
 * @param force - specific force on a regular grid, n >= 3 [m/s2]
 * @param angular - angular velocity on the same grid, if there is one [rad/s]
 * @param known - 1 where samples were recorded, 0 inside gaps [-]
 * @param sampleRateHz - samples per second [Hz]
 * @param settings - see {@link PitchSettings} [-]
 * @returns pitch and what the specific force says beside it; undefined when no direction of gravity exists [rad, m/s2]
 *
 * Source: ours
 */
export function footPitch(
  force: VectorSignal,
  angular: VectorSignal | undefined,
  known: Float64Array,
  sampleRateHz: number,
  settings: PitchSettings,
): FootPitch | undefined {
  const smooth = (signal: Float64Array): Float64Array =>
    lowPassZeroPhase(signal, sampleRateHz, settings.movementCutoffHz);
  const slow = (signal: Float64Array): Float64Array => lowPassZeroPhase(signal, sampleRateHz, settings.tempoCutoffHz);
  const calm: VectorSignal = [smooth(force[0]), smooth(force[1]), smooth(force[2])];
  const turning: VectorSignal | undefined =
    angular === undefined ? undefined : [smooth(angular[0]), smooth(angular[1]), smooth(angular[2])];
  const magnitude = calm[0].map((x, i) => Math.hypot(x, calm[1][i], calm[2][i]));
  const gravity = median(magnitude);
  if (!(gravity > 0)) return undefined;
  const excess = magnitude.map((value) => value - gravity);
  // Strides and footfalls shake the sensor and its tilt with it: what lies near a shake counts little.
  const shake = slidingRange(excess, Math.round(settings.shakeWindowS * sampleRateHz));
  const weights = shake.map((value, i) => known[i] / (1 + (value / settings.shakeAcceleration) ** 4));
  const turn = findTurn(calm, turning, weights, sampleRateHz, settings);
  if (turn === undefined) return undefined;

  const { sensorPlace } = settings;
  const tiltSdRad = excess.map((value, i) =>
    known[i] > 0 ? Math.hypot(settings.tiltSdRad, settings.tiltSdPerExcess * value) : 1e3,
  );
  const gapS = gapLengths(known, sampleRateHz);
  // A violent shake may exceed the range of the gyroscope, and what it then misses is lost for good. Across a gap the
  // straight line between its ends misses a turn that grows with the cube of the length.
  const driftSdRad = gapS.map((lengthS, i) =>
    lengthS > 0
      ? Math.max(settings.driftSdRad, Math.min(1, 2 * lengthS ** 3) / Math.sqrt(lengthS))
      : settings.driftSdRad * (1 + (shake[i] / settings.shakeAcceleration / 2) ** 2),
  );
  const trusted = weights.map((value, i) => (gapS[i] === 0 ? value : gapS[i] < 0.2 ? 1 : 0));
  const rate =
    turn.rate === undefined ? undefined : withoutOffset(turn.rate, turn.tilt, weights, trusted, sampleRateHz);
  const fuse = (tilt: Float64Array, sensed: Float64Array): Float64Array =>
    fuseTiltAndRate(tilt, sensed, sampleRateHz, { tiltSdRad, driftSdRad });
  const rough = rate === undefined ? turn.tilt : fuse(turn.tilt, rate);
  const slowRough = slow(rough);
  const slowExcess = slow(excess);
  const placeOf = (tilt: Float64Array): BehindEstimate =>
    estimateBehind(tilt, slowExcess, weights, sampleRateHz, sensorPlace);

  // Which way is up: the evidence of rest counts up to 3, that of the lever up to 6 when it is clear.
  const agreement = placeOf(slowRough).agreement;
  const rest = restEvidence(slowRough, sampleRateHz, settings.rest);
  const upward = 3 * rest.upward + 6 * agreement ** 3;
  const sense = upward < 0 ? -1 : 1;
  const oriented = (signal: Float64Array): Float64Array => signal.map((value) => value * sense);

  const zero = restEvidence(oriented(slowRough), sampleRateHz, settings.rest).level;
  const sensed = rate === undefined ? undefined : oriented(rate);
  const begun = oriented(rough).map((value) => value - zero);
  const unslipped = oriented(turn.tilt).map((value) => value - zero);
  const firstPlace = { behindM: held(placeOf(slow(begun)).behindM), aboveM: sensorPlace.aboveM };
  const slips =
    sensed === undefined
      ? []
      : findSlips(
          differenceOf(withoutShownLever(unslipped, begun, sampleRateHz, firstPlace), sensed, trusted, sampleRateHz),
          weights,
          trusted,
          sampleRateHz,
          settings.slip,
        );
  const fromRest = withoutSlips(unslipped, slips);
  const pitchFor = (place: SensorPlace, before: Float64Array): Float64Array =>
    sensed === undefined
      ? tiltWithoutLeverArm(fromRest, sampleRateHz, place, 6)
      : fuse(withoutShownLever(fromRest, before, sampleRateHz, place), sensed);
  const start = slips.length > 0 && sensed !== undefined ? fuse(fromRest, sensed) : begun;
  const { place, pitchRad } = settledPlace(start, pitchFor, placeOf, slow, settings);
  const explained = slow(verticalAcceleration(pitchRad, sampleRateHz, place));
  return {
    pitchRad,
    excess,
    unexplained: slowExcess.map((value, i) => value - explained[i]),
    accelerometerOnly: rate === undefined,
    place,
    slips,
  };
}

/**
 * Place of the sensor and pitch that agree with each other. The lever distorts the tilt from which its own length is
 * read; the secant method finds the length that reads as itself.
 */
function settledPlace(
  start: Float64Array,
  pitchFor: (place: SensorPlace, before: Float64Array) => Float64Array,
  placeOf: (tilt: Float64Array) => BehindEstimate,
  slow: (signal: Float64Array) => Float64Array,
  settings: PitchSettings,
): { readonly place: SensorPlace; readonly pitchRad: Float64Array } {
  const { aboveM } = settings.sensorPlace;
  let behindM = held(placeOf(slow(start)).behindM);
  let pitchRad = start;
  let last: { readonly behindM: number; readonly lack: number } | undefined;
  for (let round = 0; round <= settings.leverRounds; round++) {
    pitchRad = pitchFor({ behindM, aboveM }, pitchRad);
    const lack = held(placeOf(slow(pitchRad)).behindM) - behindM;
    if (Math.abs(lack) < 0.003) return { place: { behindM, aboveM }, pitchRad };
    const slope = last === undefined ? 0 : (lack - last.lack) / (behindM - last.behindM);
    last = { behindM, lack };
    // the lack falls with the length; a slope that says otherwise is noise, and a plain step is taken
    behindM = held(behindM + (slope < -0.1 ? -lack / slope : lack));
  }
  // Quick raises may hide the length that reads as itself from the secant: then the nearest of a few lengths is taken.
  let least = Number.POSITIVE_INFINITY;
  for (const tried of [0.03, 0.07, 0.11, 0.15, 0.19, 0.23]) {
    const pitch = pitchFor({ behindM: tried, aboveM }, start);
    const lack = Math.abs(held(placeOf(slow(pitch)).behindM) - tried);
    if (lack >= least) continue;
    least = lack;
    behindM = tried;
    pitchRad = pitch;
  }
  return { place: { behindM, aboveM }, pitchRad };
}

/** Between the toes and well behind the heel [m]. */
function held(behindM: number): number {
  return Math.min(0.3, Math.max(0, behindM));
}

/** Tilt of the accelerometer less what its lever adds, by the movement that the gyroscope already shows well. */
function withoutShownLever(
  shown: Float64Array,
  pitch: Float64Array,
  sampleRateHz: number,
  place: SensorPlace,
): Float64Array {
  const rate = derivative(pitch, sampleRateHz);
  const bend = derivative(rate, sampleRateHz);
  return shown.map((value, i) => value - (shownTilt(pitch[i], rate[i], bend[i], place) - pitch[i]));
}
