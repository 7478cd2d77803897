import type { Random } from './random.ts';
import { type Move, wayGone } from './smooth-move.ts';

/** Samples per second of the world [Hz]. */
export const worldRateHz = 500;

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

/** Writes smooth moves into an array of levels; between moves the last level stays. */
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

/** Adds a smooth there-and-back of the given size: 0 at both ends, full in the middle. */
export function addHump(target: Float64Array, fromS: number, toS: number, size: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    const u = (timeS - fromS) / (toS - fromS);
    target[i] += size * 64 * (u * (1 - u)) ** 3; // value and two derivatives vanish at both ends
  });
}

/** Adds a level that is reached at `fromS` and kept until `toS`, with edges outside of `edgeS` each. */
export function addPlateau(target: Float64Array, fromS: number, toS: number, edgeS: number, size: number): void {
  const shape = { kind: 'minimum-jerk', skew: 0, share: 0 } as const;
  forEachSample(target, fromS - edgeS, toS + edgeS, (i, timeS) => {
    target[i] += size * (wayGone(shape, (timeS - fromS + edgeS) / edgeS) - wayGone(shape, (timeS - toS) / edgeS));
  });
}

/** Adds a there-and-back that leaves rest at speed: a sine arch to a power of at most 1. */
export function addArch(target: Float64Array, fromS: number, toS: number, size: number, power: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    target[i] += size * Math.sin((Math.PI * (timeS - fromS)) / (toS - fromS)) ** power;
  });
}

/** Adds the bobbing of a walking body: a sine of the step rate inside smooth edges. */
export function addBobbing(target: Float64Array, fromS: number, toS: number, stepHz: number, size: number): void {
  forEachSample(target, fromS, toS, (i, timeS) => {
    const u = (timeS - fromS) / (toS - fromS);
    target[i] += size * Math.min(1, 64 * (u * (1 - u)) ** 3 * 2) * Math.sin(2 * Math.PI * stepHz * (timeS - fromS));
  });
}

/** Adds a hit that takes `speed` away from a body: a short push with a ringing tail, whose area is the speed. */
export function addHit(target: Float64Array, atS: number, speed: number, random: Random): void {
  const turn = 2 * Math.PI * random.between(15, 35);
  const decayS = random.between(0.015, 0.04);
  const area = turn / (turn * turn + 1 / (decayS * decayS)); // integral of exp(-t/d) sin(w t) from 0 on
  forEachSample(target, atS, atS + 0.25, (i, timeS) => {
    const t = timeS - atS;
    target[i] += (speed / area) * Math.exp(-t / decayS) * Math.sin(turn * t);
  });
}
