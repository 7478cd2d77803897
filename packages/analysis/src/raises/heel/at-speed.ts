import { type FitData, fitMove, type Move } from './move-fit.ts';
import type { MoveShape } from './move-shape.ts';

/**
 * Log-likelihood ratio for a bump that leaves or reaches its low at speed, over one that starts and ends smoothly. A
 * body that stands cannot leave rest at speed, a hand on a string can.
 *
 * Both ways are fitted with the smooth shapes and with a quarter sine, which is quickest at the low end; the better of
 * the smooth ones stands for a body.
 *
 * @param data - samples around the bump [s, m]
 * @param guess - where to begin [s, m]
 * @param smoothShapes - shapes a body may have [-]
 * @returns the ratio, held between -20 and 20; above 0 for a start or an end at speed [-]
 *
 * Source: ours
 */
export function startsAtSpeed(data: FitData, guess: Move, smoothShapes: readonly MoveShape[]): number {
  let up = Number.POSITIVE_INFINITY;
  let down = Number.POSITIVE_INFINITY;
  for (const shape of smoothShapes) {
    const fit = fitMove(data, guess, shape, shape);
    if (fit === undefined) continue;
    up = Math.min(up, fit.upMisfit);
    down = Math.min(down, fit.downMisfit);
  }
  const rival = fitMove(data, guess, quarterSine, fallingQuarterSine);
  if (rival === undefined || !Number.isFinite(up) || !Number.isFinite(down)) return 0;
  // Neighbouring samples repeat each other, and both models leave out much: the ratio is taken at a fifth of its face value.
  const ratio = (up + down - rival.upMisfit - rival.downMisfit) / 2 / 5;
  return Math.max(-20, Math.min(20, ratio));
}

function table(value: (u: number) => number): Float64Array {
  return Float64Array.from({ length: 129 }, (_, i) => value(i / 128));
}

const quarterSine: MoveShape = {
  way: table((u) => Math.sin((Math.PI / 2) * u)),
  speed: table((u) => (Math.PI / 2) * Math.cos((Math.PI / 2) * u)),
};

const fallingQuarterSine: MoveShape = {
  way: table((u) => 1 - Math.cos((Math.PI / 2) * u)),
  speed: table((u) => (Math.PI / 2) * Math.sin((Math.PI / 2) * u)),
};
