import { solveSymmetric } from '../raises/heel/linear-solve.ts';
import type { OnsetRule } from './effort-settings.ts';
import type { Samples } from './rest-level.ts';

/** A force that starts as a power of time and settles: height (1 - exp(-((t - startS) / riseS)^power)). */
export interface RiseCurve {
  readonly startS: number;
  readonly riseS: number;
  readonly power: number;
  readonly height: number;
  /** standard uncertainty of the start by the fit alone [s] */
  readonly startUS: number;
}

/**
 * Force on a rise curve.
 *
 * @param curve - the curve [s, N or N.m]
 * @param timeS - when [s]
 * @returns force above the resting level, 0 before the start [unit of height]
 *
 * Source: exponential rise: Maffiuletti et al. (2016), Eur J Appl Physiol 116:1091-1116; the power is ours
 */
export function forceOnCurve(curve: Omit<RiseCurve, 'startUS'>, timeS: number): number {
  const s = timeS - curve.startS;
  return s <= 0 ? 0 : curve.height * -Math.expm1(-((s / curve.riseS) ** curve.power));
}

/** Noise of the samples of a rise. */
export interface RiseNoise {
  /** standard deviation of a sample at rest, > 0 [unit of samples] */
  readonly sample: number;
  /** standard deviation of its stamp [s] */
  readonly stampS: number;
}

const unknowns = 4;

interface Normal {
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  cost: number;
}

/** Weighted normal equations in start, log rise time, log power, height; large residuals count as Huber (1964) counts them. */
function normalEquations(part: Samples, curve: RiseCurve, noise: RiseNoise, rule: OnsetRule): Normal {
  const matrix = new Float64Array(unknowns * unknowns);
  const right = new Float64Array(unknowns);
  const slope = new Float64Array(unknowns);
  let cost = 0;
  for (let i = 0; i < part.samples.length; i++) {
    const s = part.timesS[i] - curve.startS;
    let force = 0;
    slope.fill(0);
    if (s > 0) {
      const x = (s / curve.riseS) ** curve.power;
      const decay = Math.exp(-x);
      force = curve.height * (1 - decay);
      const steep = curve.height * decay * x;
      slope[0] = (-steep * curve.power) / s;
      slope[1] = -steep * curve.power;
      slope[2] = steep * Math.log(s / curve.riseS) * curve.power;
      slope[3] = 1 - decay;
    }
    const sd = Math.hypot(noise.sample, rule.unsteadyShare * force, noise.stampS * slope[0]);
    const residual = (part.samples[i] - force) / sd;
    const size = Math.abs(residual);
    const weight = size <= rule.huber ? 1 : rule.huber / size;
    cost += size <= rule.huber ? (size * size) / 2 : rule.huber * (size - rule.huber / 2);
    for (let j = 0; j < unknowns; j++) {
      right[j] += (weight * residual * slope[j]) / sd;
      for (let k = 0; k <= j; k++) matrix[j * unknowns + k] += (weight * slope[j] * slope[k]) / (sd * sd);
    }
  }
  const away = (Math.log(curve.power) - Math.log(rule.usualPower)) / rule.powerSpread;
  cost += (away * away) / 2;
  right[2] -= away / rule.powerSpread;
  matrix[2 * unknowns + 2] += 1 / rule.powerSpread ** 2;
  return { matrix, right, cost };
}

function moved(curve: RiseCurve, step: Float64Array): RiseCurve {
  return {
    startS: curve.startS + step[0],
    riseS: curve.riseS * Math.exp(Math.max(-1, Math.min(1, step[1]))),
    power: curve.power * Math.exp(Math.max(-0.5, Math.min(0.5, step[2]))),
    height: curve.height + step[3],
    startUS: curve.startUS,
  };
}

/**
 * The rise curve that fits samples best: damped least squares (Levenberg and Marquardt) with a weak expectation of the power,
 * and residuals that knocks leave counted less.
 *
 * @param part - samples above the resting level, from before the start to high on the rise [s, N or N.m]
 * @param first - where to begin [s, N or N.m]
 * @param noise - of a sample and of its stamp [unit of samples, s]
 * @param rule - how onsets are found, see {@link OnsetRule} [-]
 * @returns the curve; null when no fit is found [s, unit of samples]
 *
 * Source: Marquardt (1963), J Soc Ind Appl Math 11:431-441; Huber (1964), Ann Math Stat 35:73-101
 */
export function fitRise(part: Samples, first: RiseCurve, noise: RiseNoise, rule: OnsetRule): RiseCurve | null {
  let curve = first;
  let damping = 1e-2;
  let normal = normalEquations(part, curve, noise, rule);
  for (let round = 0; round < 60; round++) {
    const matrix = normal.matrix.slice();
    for (let j = 0; j < unknowns; j++) matrix[j * unknowns + j] *= 1 + damping;
    const step = normal.right.slice();
    if (!solveSymmetric(matrix, [step], unknowns)) return null;
    const next = moved(curve, step);
    const beyond = normalEquations(part, next, noise, rule);
    if (beyond.cost <= normal.cost) {
      const gain = normal.cost - beyond.cost;
      curve = next;
      normal = beyond;
      damping = Math.max(1e-9, damping / 5);
      if (gain < 1e-7 * (1 + normal.cost)) break;
    } else {
      damping *= 4;
      if (damping > 1e8) break;
    }
  }
  const unit = new Float64Array(unknowns);
  unit[0] = 1;
  if (!solveSymmetric(normal.matrix.slice(), [unit], unknowns) || !(curve.riseS > 0)) return null;
  return { ...curve, startUS: Math.sqrt(unit[0]) };
}
