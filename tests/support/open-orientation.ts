import { heelDefaults } from '../../packages/analysis/src/assess/defaults/heel.ts';
import { restToRest } from '../../packages/analysis/src/movement/displacement.ts';
import {
  tiltInPlane,
  turningPlane,
  type Vector,
  weightedMean,
} from '../../packages/analysis/src/movement/orientation.ts';
import { fuseTiltAndRate } from '../../packages/analysis/src/movement/pitch-smoother.ts';
import { lowPassZeroPhase } from '../../packages/analysis/src/signal/lowpass.ts';
import { type Agreement, agreement, openNumbers, vectorOnGrid } from './open-recordings.ts';

const RATE_HZ = 200;
const GRAVITY = 9.80665; // m/s2, ISO 80000-3
const DEGREES = 180 / Math.PI;
const { movementCutoffHz, tiltSdRad, tiltSdPerExcess, driftSdRad } = heelDefaults.pitch;

interface Optics {
  readonly timesS: readonly number[];
  /** up in the sensor's axes */
  readonly up: readonly Vector[];
  readonly heightM: readonly number[];
}

function optics(name: 'rotation' | 'translation'): Optics {
  const file = `orientation-optical/${name}-optical.csv`;
  const [w, x, y, z] = ['q_w', 'q_x', 'q_y', 'q_z'].map((column) => openNumbers(file, column));
  // third row of the rotation matrix of the quaternion from sensor to earth
  const up = w.map((_, i): Vector => {
    const [qw, qx, qy, qz] = [w[i], x[i], y[i], z[i]];
    return [2 * (qx * qz - qw * qy), 2 * (qy * qz + qw * qx), qw * qw - qx * qx - qy * qy + qz * qz];
  });
  return { timesS: openNumbers(file, 'time_s'), up, heightM: openNumbers(file, 'height_m') };
}

function smoothed(name: 'rotation' | 'translation', quantity: 'acceleration' | 'angular-velocity') {
  const [x, y, z] = vectorOnGrid(`orientation-optical/${name}-imu.csv`, quantity, RATE_HZ);
  const smooth = (signal: Float64Array): Float64Array => lowPassZeroPhase(signal, RATE_HZ, movementCutoffHz);
  return [smooth(x), smooth(y), smooth(z)] as const;
}

/** Degrees between the direction of gravity that the accelerometer shows and the one of the optics, root mean square. */
export function rotationTiltErrorDeg(): number {
  const [x, y, z] = smoothed('rotation', 'acceleration');
  const { timesS, up } = optics('rotation');
  let squares = 0;
  let count = 0;
  timesS.forEach((timeS, i) => {
    const at = Math.round(timeS * RATE_HZ);
    if (at >= x.length) return;
    const length = Math.hypot(x[at], y[at], z[at]);
    const cosine = (x[at] * up[i][0] + y[at] * up[i][1] + z[at] * up[i][2]) / length;
    squares += (Math.acos(Math.min(1, cosine)) * DEGREES) ** 2;
    count += 1;
  });
  return Math.sqrt(squares / count);
}

/** Tilt about one sensor axis while the sensor is shaken: accelerometer alone, and with the gyroscope, against optics. */
export function translationTilt(axis: 0 | 1): { readonly alone: Agreement; readonly fused: Agreement } {
  const force = smoothed('translation', 'acceleration');
  const angular = smoothed('translation', 'angular-velocity');
  const still = force[0].map((_, i) => (i < 4 * RATE_HZ ? 1 : 0));
  const direction: Vector = axis === 0 ? [1, 0, 0] : [0, 1, 0];
  const plane = turningPlane(direction, weightedMean(force, still))!;
  const alone = tiltInPlane(force, plane);
  const excess = force[0].map((x, i) => Math.hypot(x, force[1][i], force[2][i]) - GRAVITY);
  // seen from the sensor, gravity turns against the sensor's own turn
  const rate = angular[axis].map((value) => -value);
  const noise = {
    tiltSdRad: excess.map((value) => Math.hypot(tiltSdRad, tiltSdPerExcess * value)),
    driftSdRad: excess.map(() => driftSdRad),
  };
  const { timesS, up } = optics('translation');
  const optical = Float64Array.from(tiltInPlane(columns(up), plane), (value) => value * DEGREES);
  const against = (tilt: Float64Array): Agreement => {
    const ours: number[] = [];
    const theirs: number[] = [];
    timesS.forEach((timeS, i) => {
      const at = Math.round(timeS * RATE_HZ);
      if (at >= tilt.length) return;
      ours.push(tilt[at] * DEGREES);
      theirs.push(optical[i]);
    });
    return agreement(ours, theirs);
  };
  return { alone: against(alone), fused: against(fuseTiltAndRate(alone, rate, RATE_HZ, noise)) };
}

function columns(vectors: readonly Vector[]) {
  return [0, 1, 2].map((k) => Float64Array.from(vectors, (vector) => vector[k])) as unknown as readonly [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
}

/**
 * Vertical way from one turning point of the optical height to the next, by double integration with zero speed at both
 * ends, against the optics. The upward acceleration is the magnitude of the specific force minus gravity, as at the trunk.
 */
export function verticalWayMm(): Agreement & { readonly segments: number } {
  const [x, y, z] = smoothed('translation', 'acceleration');
  const upward = x.map((value, i) => Math.hypot(value, y[i], z[i]) - GRAVITY);
  const { timesS, heightM } = optics('translation');
  const smooth = lowPassZeroPhase(Float64Array.from(heightM), 1 / (timesS[1] - timesS[0]), movementCutoffHz);
  const turns = turningPoints(smooth);
  const ours: number[] = [];
  const theirs: number[] = [];
  for (let k = 0; k + 1 < turns.length; k += 1) {
    const [from, to] = [turns[k], turns[k + 1]];
    const start = Math.round(timesS[from] * RATE_HZ);
    const part = upward.subarray(start, Math.round(timesS[to] * RATE_HZ) + 1);
    if (part.length < 2) continue;
    const { displacementM } = restToRest(part, RATE_HZ, 'anywhere');
    for (let i = from; i <= to; i += 1) {
      const at = Math.min(Math.round(timesS[i] * RATE_HZ) - start, displacementM.length - 1);
      ours.push(displacementM[at] * 1000);
      theirs.push((heightM[i] - heightM[from]) * 1000);
    }
  }
  return { ...agreement(ours, theirs), segments: turns.length - 1 };
}

/** Where the height turns by more than 30 mm. */
function turningPoints(heightM: Float64Array): number[] {
  const turns: number[] = [];
  let extreme = 0;
  let rising: boolean | undefined;
  for (let i = 1; i < heightM.length; i += 1) {
    const way = heightM[i] - heightM[extreme];
    if (rising === undefined) {
      if (Math.abs(way) > 0.03) {
        rising = way > 0;
        extreme = i;
      }
    } else if (rising ? way > 0 : way < 0) {
      extreme = i;
    } else if (Math.abs(way) > 0.03) {
      turns.push(extreme);
      rising = !rising;
      extreme = i;
    }
  }
  return turns;
}
