import { fitMove, type Move } from './move-fit.ts';
import type { MoveShape } from './move-shape.ts';

/**
 * Log-likelihood ratio for a bump that leaves or reaches its low at speed, over one that starts and ends smoothly. A
 * body that stands cannot leave rest at speed, a hand on a string can.
 *
 * Both ways are fitted with the smooth shapes and with a quarter sine, which is quickest at the low end; the better of
 * the smooth ones stands for a body.
 *
 * @param timesS - sample times around the bump [s]
 * @param level - level at those times [m]
 * @param guess - where to begin [s, m]
 * @param smoothShapes - shapes a body may have [-]
 * @param noise - usual departure of a sample from a smooth move [m]
 * @returns the ratio, held between -20 and 20; above 0 for a start or an end at speed [-]
 *
 * Source: ours
 */
export function startsAtSpeed(
  timesS: Float64Array,
  level: Float64Array,
  guess: Move,
  smoothShapes: readonly MoveShape[],
  noise: number,
): number {
  let up = Number.POSITIVE_INFINITY;
  let down = Number.POSITIVE_INFINITY;
  for (const shape of smoothShapes) {
    const fit = fitMove(timesS, level, guess, shape, shape, noise);
    if (fit === undefined) continue;
    up = Math.min(up, fit.upMisfit);
    down = Math.min(down, fit.downMisfit);
  }
  const rival = fitMove(timesS, level, guess, quarterSine, fallingQuarterSine, noise);
  if (rival === undefined || !Number.isFinite(up) || !Number.isFinite(down)) return 0;
  // Neighbouring samples repeat each other, and both models leave out much: the ratio is taken at a tenth of its face value.
  const ratio = (up + down - rival.upMisfit - rival.downMisfit) / 2 / 10;
  return Math.max(-20, Math.min(20, ratio));
}

function table(value: (u: number) => number): Float64Array {
  return Float64Array.from({ length: 257 }, (_, i) => value(i / 256));
}

const quarterSine: MoveShape = {
  name: 'at speed',
  way: table((u) => Math.sin((Math.PI / 2) * u)),
  speed: table((u) => (Math.PI / 2) * Math.cos((Math.PI / 2) * u)),
};

const fallingQuarterSine: MoveShape = {
  name: 'to a stop at speed',
  way: table((u) => 1 - Math.cos((Math.PI / 2) * u)),
  speed: table((u) => (Math.PI / 2) * Math.sin((Math.PI / 2) * u)),
};
