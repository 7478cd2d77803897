import { solveTridiagonal } from './pitch-smoother.ts';

/** standard gravity [m/s2], ISO 80000-3 */
const GRAVITY = 9.80665;

/** Where the sensor sits, seen from the axis of the turn at the metatarsal heads. */
export interface SensorPlace {
  /** distance behind the axis, along the foot [m] */
  readonly behindM: number;
  /** distance above the sole line [m] */
  readonly aboveM: number;
}

/**
 * Vertical acceleration of the sensor when the foot turns about the metatarsal heads.
 *
 * @param tilt - elevation of the foot line at each sample [rad]
 * @param sampleRateHz - samples per second [Hz]
 * @param place - where the sensor sits [m]
 * @returns acceleration, up positive; 0 at the two ends [m/s2]
 *
 * Source: definition (second difference of behind sin tilt + above cos tilt)
 */
export function verticalAcceleration(tilt: Float64Array, sampleRateHz: number, place: SensorPlace): Float64Array {
  const height = tilt.map((angle) => place.behindM * Math.sin(angle) + place.aboveM * Math.cos(angle));
  const acceleration = new Float64Array(tilt.length);
  for (let i = 1; i < tilt.length - 1; i++) {
    acceleration[i] = (height[i + 1] - 2 * height[i] + height[i - 1]) * sampleRateHz * sampleRateHz;
  }
  return acceleration;
}

/**
 * Tilt that an accelerometer shows while the foot turns: the direction of gravity and of the sensor's own acceleration
 * together.
 *
 * @param tilt - true elevation of the foot line [rad]
 * @param rate - its rate of change [rad/s]
 * @param acceleration - the rate of change of that [rad/s2]
 * @param place - where the sensor sits [m]
 * @returns the tilt shown [rad]
 *
 * Source: definition (rigid body: radial and tangential acceleration of a point)
 */
export function shownTilt(tilt: number, rate: number, acceleration: number, place: SensorPlace): number {
  const { behindM, aboveM } = place;
  return Math.atan2(
    GRAVITY * Math.sin(tilt) - behindM * rate * rate - aboveM * acceleration,
    GRAVITY * Math.cos(tilt) + behindM * acceleration - aboveM * rate * rate,
  );
}

/** Longest step of one round: in strides the model fails, and the solution must not run away there [rad]. */
const longestStep = 0.2;

/** No foot that turns about its forefoot is steeper than this [rad]. */
const steepest = 1.6;

/** Near free fall the direction of the specific force means little; it is then taken for this long [m/s2]. */
const leastForce = 3;

/** Shortest turn from one angle to another, -pi to pi [rad]. */
function turnBetween(from: number, to: number): number {
  return to - from - 2 * Math.PI * Math.round((to - from) / (2 * Math.PI));
}

/**
 * True tilt from the tilt that an accelerometer shows while the foot turns.
 *
 * Newton's method on {@link shownTilt} at all samples together: each round solves a t + b t' + c t'' = what the estimate
 * leaves of the reading, with the three slopes of the reading at the estimate. As c is negative (to first order
 * -(above cos t + behind sin t) / g), the system is tridiagonal with a heavy diagonal, and its solution divides a
 * frequency w by about 1 + |c| w^2: it can only damp, so noise never grows.
 *
 * @param shown - tilt from the accelerometer, low-passed [rad]
 * @param sampleRateHz - samples per second [Hz]
 * @param place - where the sensor sits [m]
 * @param rounds - how often the estimate is improved; 6 is enough for cycles down to 0.7 s [-]
 * @returns the tilt of the foot line [rad]
 *
 * Source: ours
 */
export function tiltWithoutLeverArm(
  shown: Float64Array,
  sampleRateHz: number,
  place: SensorPlace,
  rounds: number,
): Float64Array {
  const count = shown.length;
  const tilt = Float64Array.from(shown);
  if (count < 3) return tilt;
  const { behindM, aboveM } = place;
  const lower = new Float64Array(count);
  const diagonal = new Float64Array(count);
  const upper = new Float64Array(count);
  const rest = new Float64Array(count);
  for (let round = 0; round < rounds; round++) {
    for (let i = 0; i < count; i++) {
      const inner = i > 0 && i < count - 1;
      const t = tilt[i];
      // In the first round the tilt still holds the distortion; its own movement would be counted twice.
      const moving = inner && round > 0;
      const rate = moving ? ((tilt[i + 1] - tilt[i - 1]) / 2) * sampleRateHz : 0;
      const bend = moving ? (tilt[i + 1] - 2 * t + tilt[i - 1]) * sampleRateHz * sampleRateHz : 0;
      const along = GRAVITY * Math.sin(t) - behindM * rate * rate - aboveM * bend;
      const up = GRAVITY * Math.cos(t) + behindM * bend - aboveM * rate * rate;
      const square = Math.max(leastForce * leastForce, along * along + up * up);
      const byTilt = Math.max(0.3, (GRAVITY * (up * Math.cos(t) + along * Math.sin(t))) / square);
      const byRate = inner ? (2 * rate * (aboveM * along - behindM * up)) / square : 0;
      const byBend = inner ? Math.max(0, (aboveM * up + behindM * along) / square) : 0;
      const stiffness = byBend * sampleRateHz * sampleRateHz;
      // a drift term steeper than the stiffness would upset the balance of the diagonal
      const drift = Math.max(-stiffness, Math.min(stiffness, (byRate * sampleRateHz) / 2));
      lower[i] = -stiffness - drift;
      upper[i] = -stiffness + drift;
      diagonal[i] = byTilt + 2 * stiffness;
      // Round 0 solves for the tilt itself, the others for what it lacks.
      rest[i] = round === 0 ? shown[i] * byTilt : turnBetween(Math.atan2(along, up), shown[i]);
    }
    solveTridiagonal(lower, diagonal, upper, rest);
    for (let i = 0; i < count; i++) {
      const next = round === 0 ? rest[i] : tilt[i] + Math.max(-longestStep, Math.min(longestStep, rest[i]));
      tilt[i] = Math.max(-steepest, Math.min(steepest, next));
    }
  }
  return tilt;
}
