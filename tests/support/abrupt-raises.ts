import { createRandom } from '../../packages/analysis/src/signal/random.ts';
import type { Trace } from '../../packages/analysis/src/trace.ts';

/** Raises whose moves are thrust at a constant acceleration: half of the time up, half of it down. */
export interface AbruptRaises {
  readonly count: number;
  /** time from one to the next, and the shares of it that are held at the top and rested at the bottom [s, -] */
  readonly cycleS: number;
  readonly holdShare?: number;
  readonly restShare?: number;
  /** time in which a free fall is stopped by the floor, in place of a thrust that slows it down [s] */
  readonly stopS?: number;
  /** rise of the body [m] */
  readonly riseM: number;
  readonly seed: number;
}

/** Acceleration of 100 samples a second after 3 s of standing, in sway of about 0.05 m/s2 below some 3 Hz [m/s2]. */
function accelerations(raises: AbruptRaises): Float64Array {
  const { count, cycleS, holdShare = 0.1, restShare = 0.1, riseM, seed } = raises;
  const random = createRandom(seed);
  const moveS = (cycleS * (1 - holdShare - restShare)) / 2;
  const thrust = (4 * riseM) / moveS ** 2;
  const { stopS = moveS / 2 } = raises;
  const fallS = moveS - stopS;
  const fall = (2 * riseM) / (fallS * moveS);
  let sway = 0;
  return Float64Array.from({ length: Math.round(100 * (6 + count * cycleS)) }, (_, i) => {
    sway = 0.8 * sway + 0.1 * (random() - 0.5);
    const at = i / 100 - 3;
    if (at < 0 || at >= count * cycleS) return sway;
    const since = at % cycleS;
    const quarter = Math.floor(since / (moveS / 2));
    if (quarter < 2) return sway + (quarter === 0 ? thrust : -thrust);
    const falling = since - moveS - holdShare * cycleS;
    if (falling < 0 || falling >= moveS) return sway;
    return sway + (falling < fallS ? -fall : (fall * fallS) / stopS);
  });
}

/** Such raises of somebody of 70 kg on a platform. */
export function abruptOnPlatform(raises: AbruptRaises): Trace {
  const upward = accelerations(raises);
  const samples = upward.map((value) => 70 * (9.80665 + value));
  const timesS = Float64Array.from(upward, (_, i) => i / 100);
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

/** Such raises with an upright accelerometer at the trunk. */
export function abruptAtTrunk(raises: AbruptRaises): Trace {
  const upward = accelerations(raises);
  const timesS = Float64Array.from(upward, (_, i) => i / 100);
  const flat = new Float64Array(upward.length);
  const channels = (['x', 'y', 'z'] as const).map((axis) => ({
    quantity: 'acceleration' as const,
    axis,
    samples: axis === 'z' ? upward.map((value) => 9.80665 + value) : flat,
  }));
  return { groups: [{ timesS, channels }] };
}
