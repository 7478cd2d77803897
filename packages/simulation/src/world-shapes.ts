import type { Random } from './random.ts';
import { type Move, thereAndBack, wayGone } from './smooth-move.ts';

/** Samples per second of the world [Hz]. */
export const worldRateHz = 500;

const minimumJerk = { kind: 'minimum-jerk', skew: 0, share: 0 } as const;

function forEachSample(
  target: Float64Array,
  fromS: number,
  toS: number,
  change: (i: number, timeS: number) => void,
): void {
  const from = Math.max(0, Math.ceil(fromS * worldRateHz));
  const to = Math.min(target.length, Math.ceil(toS * worldRateHz));
  for (let i = from; i < to; i++) change(i, i / worldRateHz);
}

/**
 * Levels that smooth moves lead to, written into an array; between moves the last level stays.
 *
 * @param target - changed in place, at the rate of the world [unit]
 * @param moves - in time order, none overlapping [s, unit]
 * @param startLevel - level before the first move [unit]
 *
 * Source: ours
 */
export function drawMoves(target: Float64Array, moves: readonly Move[], startLevel: number): void {
  let level = startLevel;
  let index = 0;
  for (const move of moves) {
    const from = Math.ceil(move.fromS * worldRateHz);
    const to = Math.ceil(move.toS * worldRateHz);
    while (index < Math.min(from, target.length)) target[index++] = level;
    while (index < Math.min(to, target.length)) {
      const gone = wayGone(move.shape, (index / worldRateHz - move.fromS) / (move.toS - move.fromS));
      target[index++] = move.from + gone * (move.to - move.from);
    }
    level = move.to;
  }
  while (index < target.length) target[index++] = level;
}

/**
 * A smooth there-and-back, added to a signal: 0 at both ends, full in the middle.
 *
 * @param target - changed in place, at the rate of the world [unit]
 * @param fromS - begin [s]
 * @param toS - end [s]
 * @param size - greatest value [unit]
 *
 * Source: ours
 */
export function addHump(target: Float64Array, fromS: number, toS: number, size: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    target[i] += size * thereAndBack((timeS - fromS) / (toS - fromS));
  });
}

/**
 * A level with smooth edges, added to a signal.
 *
 * @param target - changed in place, at the rate of the world [unit]
 * @param fromS - the level is reached [s]
 * @param toS - the level is left [s]
 * @param edgeS - duration of each edge, outside of the two [s]
 * @param size - the level [unit]
 *
 * Source: ours
 */
export function addPlateau(target: Float64Array, fromS: number, toS: number, edgeS: number, size: number): void {
  forEachSample(target, fromS - edgeS, toS + edgeS, (i, timeS) => {
    target[i] +=
      size * (wayGone(minimumJerk, (timeS - fromS + edgeS) / edgeS) - wayGone(minimumJerk, (timeS - toS) / edgeS));
  });
}

/**
 * A there-and-back that leaves rest at speed, added to a signal: a sine arch to a power.
 *
 * @param target - changed in place, at the rate of the world [unit]
 * @param fromS - begin [s]
 * @param toS - end [s]
 * @param size - greatest value [unit]
 * @param power - above 0, at most 1; smaller is more sudden [-]
 *
 * Source: ours
 */
export function addArch(target: Float64Array, fromS: number, toS: number, size: number, power: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    target[i] += size * Math.sin((Math.PI * (timeS - fromS)) / (toS - fromS)) ** power;
  });
}

/**
 * The bobbing of a walking body, added to a signal: a sine of the step rate inside smooth edges.
 *
 * @param target - changed in place, at the rate of the world [unit]
 * @param fromS - begin [s]
 * @param toS - end [s]
 * @param stepHz - steps per second [Hz]
 * @param size - half height [unit]
 *
 * Source: ours
 */
export function addBobbing(target: Float64Array, fromS: number, toS: number, stepHz: number, size: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    const edgeS = (toS - fromS) / 3;
    const window = wayGone(minimumJerk, (timeS - fromS) / edgeS) * wayGone(minimumJerk, (toS - timeS) / edgeS);
    target[i] += size * window * Math.sin(2 * Math.PI * stepHz * (timeS - fromS));
  });
}

/**
 * A hit, added to an acceleration: a short push with a ringing tail.
 *
 * @param target - changed in place, at the rate of the world [m/s2]
 * @param atS - when [s]
 * @param speed - area of the push: speed taken from a falling body [m/s]
 * @param random - stream for the pitch and length of the ringing [-]
 *
 * Source: ours
 */
export function addHit(target: Float64Array, atS: number, speed: number, random: Random): void {
  const turn = 2 * Math.PI * random.between(8, 20);
  const decayS = random.between(0.015, 0.04);
  const area = turn / (turn * turn + 1 / (decayS * decayS)); // integral of exp(-t/d) sin(w t) from 0 on
  forEachSample(target, atS, atS + 0.25, (i, timeS) => {
    const t = timeS - atS;
    target[i] += (speed / area) * Math.exp(-t / decayS) * Math.sin(turn * t);
  });
}
