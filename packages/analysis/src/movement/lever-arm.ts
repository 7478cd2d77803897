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

/** Shortest turn from one angle to another, -pi to pi [rad]. */
function turnBetween(from: number, to: number): number {
  return to - from - 2 * Math.PI * Math.round((to - from) / (2 * Math.PI));
}

/**
 * True tilt from the tilt that an accelerometer shows while the foot turns.
 *
 * To first order shown = t - (r/g) t'' - (c/g) t'^2 with r = above cos t + behind sin t, c = behind cos t - above sin t.
 * With r and t' from the estimate before, t - (r/g) t'' = right-hand side is a tridiagonal system whose solution
 * divides a frequency w by 1 + r w^2/g: it can only damp, so noise never grows. What first order leaves is put right from
 * the exact {@link shownTilt} in each round.
 *
 * @param shown - tilt from the accelerometer, low-passed [rad]
 * @param sampleRateHz - samples per second [Hz]
 * @param place - where the sensor sits [m]
 * @param rounds - how often the estimate is improved; 4 is enough for half-second cycles [-]
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
  if (count < 3) return Float64Array.from(shown);
  const { behindM, aboveM } = place;
  let tilt = Float64Array.from(shown);
  const lower = new Float64Array(count);
  const diagonal = new Float64Array(count);
  for (let round = 0; round < rounds; round++) {
    const right = Float64Array.from(shown);
    for (let i = 0; i < count; i++) {
      const inner = i > 0 && i < count - 1;
      const sine = Math.sin(tilt[i]);
      const cosine = Math.cos(tilt[i]);
      const reach = Math.max(0, aboveM * cosine + behindM * sine);
      const stiffness = inner ? (reach / GRAVITY) * sampleRateHz * sampleRateHz : 0;
      lower[i] = -stiffness;
      diagonal[i] = 1 + 2 * stiffness;
      if (!inner) continue;
      const rate = ((tilt[i + 1] - tilt[i - 1]) / 2) * sampleRateHz;
      const bend = (tilt[i + 1] - 2 * tilt[i] + tilt[i - 1]) * sampleRateHz * sampleRateHz;
      // what the linear part does not explain of the exact reading of the estimate
      right[i] = shown[i] - (turnBetween(tilt[i], shownTilt(tilt[i], rate, bend, place)) + (reach / GRAVITY) * bend);
    }
    tilt = solveTridiagonal(lower, diagonal, lower, right) as Float64Array<ArrayBuffer>;
  }
  return tilt;
}
