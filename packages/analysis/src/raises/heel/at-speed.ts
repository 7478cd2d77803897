import { type FitData, misfitOfMove } from './move-fit.ts';
import type { Move } from './move-model.ts';
import type { MoveShape } from './move-shape.ts';

/**
 * Log-likelihood ratio for a bump that leaves or reaches its low at speed, over one that starts and ends smoothly. A
 * body that stands cannot leave rest at speed, a hand on a string can.
 *
 * Both ways are fitted with the smooth shapes and with a quarter sine to the powers 1 and 0.6, which are quickest at the low
 * end; the better of either kind stands for it.
 *
 * @param data - samples around the bump [s, m]
 * @param guess - where to begin [s, m]
 * @param smoothShapes - shapes a body may have [-]
 * @returns the ratio, held between -20 and 20; above 0 for a start or an end at speed, and below it no smaller than it has to be [-]
 *
 * Source: ours
 */
export function startsAtSpeed(data: FitData, guess: Move, smoothShapes: readonly MoveShape[]): number {
  // A sudden move begins later and ends sooner than a smooth one through the same crossings.
  const [upS, downS] = [guess.highFromS - guess.startS, guess.endS - guess.highToS];
  const later = { ...guess, startS: guess.startS + 0.2 * upS, endS: guess.endS - 0.2 * downS };
  let rival = noFit;
  for (const [rising, falling] of suddenShapes) rival = better(rival, misfitOfMove(data, later, rising, falling));
  if (!isWhole(rival)) return 0;
  let smooth = noFit;
  let ratio = 0;
  for (const shape of smoothShapes) {
    smooth = better(smooth, misfitOfMove(data, guess, shape, shape));
    if (!isWhole(smooth)) continue;
    ratio = ratioOf(smooth, rival, data.timesS.length / 2);
    // one more shape can only make it smaller
    if (ratio < 0) break;
  }
  return Math.max(-20, Math.min(20, ratio));
}

interface Misfits {
  readonly upMisfit: number;
  readonly downMisfit: number;
}

const noFit: Misfits = { upMisfit: Number.POSITIVE_INFINITY, downMisfit: Number.POSITIVE_INFINITY };

function isWhole({ upMisfit, downMisfit }: Misfits): boolean {
  return Number.isFinite(upMisfit + downMisfit);
}

/** The better of either way. */
function better(one: Misfits, other: Misfits = noFit): Misfits {
  return {
    upMisfit: Math.min(one.upMisfit, other.upMisfit),
    downMisfit: Math.min(one.downMisfit, other.downMisfit),
  };
}

/**
 * The misfits are compared as a ratio, for neither model is right to the last millimetre, and neighbouring samples repeat each other:
 * a fifth of them counts.
 */
function ratioOf(smooth: Misfits, rival: Misfits, half: number): number {
  const up = Math.log((smooth.upMisfit + half) / (rival.upMisfit + half));
  const down = Math.log((smooth.downMisfit + half) / (rival.downMisfit + half));
  return (half * (up + down)) / 5;
}

function table(value: (u: number) => number): Float64Array {
  return Float64Array.from({ length: 129 }, (_, i) => value(i / 128));
}

/** A quarter sine to a power of at most 1: the smaller, the more sudden. */
function sudden(power: number): readonly [rising: MoveShape, falling: MoveShape] {
  const way = (u: number): number => Math.sin((Math.PI / 2) * u) ** power;
  // the speed at the low end may have no bound: a step of the table takes its place
  const step = 1 / 128;
  const speed = (u: number): number => (way(Math.min(1, u + step)) - way(Math.max(0, u - step / 2))) / (1.5 * step);
  return [
    { way: table(way), speed: table(speed) },
    { way: table((u) => 1 - way(1 - u)), speed: table((u) => speed(1 - u)) },
  ];
}

const suddenShapes = [sudden(1), sudden(0.6)];
