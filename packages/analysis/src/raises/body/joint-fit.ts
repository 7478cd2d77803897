import { addPrior, type JointScales, type JointState, MEAN_UNKNOWNS, priorCost } from './joint-prior.ts';
import { type EnvelopeFactor, NormalEquations } from './normal-equations.ts';
import { type Cells, EACH, type SetAcceleration, SHAPE_UNKNOWNS, setAcceleration } from './set-moves.ts';
import type { BodySettings } from './settings.ts';

/** A fitted set and the factor of its precision, from which uncertainties follow. */
export interface JointFit {
  readonly state: JointState;
  readonly factor: EnvelopeFactor;
}

function clamp(low: number, value: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}

function moved(state: JointState, step: Float64Array): JointState {
  const base = state.repetitions.length * EACH;
  const m = base + SHAPE_UNKNOWNS;
  const { shape, means } = state;
  return {
    repetitions: state.repetitions.map((one, k) => ({
      startS: one.startS + step[k * EACH],
      logRise: one.logRise + clamp(-0.4, step[k * EACH + 1], 0.4),
      holdS: one.holdS + step[k * EACH + 2],
      logFall: one.logFall + clamp(-0.4, step[k * EACH + 3], 0.4),
      topM: one.topM + step[k * EACH + 4],
      bottomM: one.bottomM + step[k * EACH + 5],
      joined: one.joined,
    })),
    shape: {
      ends: clamp(1, shape.ends * Math.exp(clamp(-0.3, step[base], 0.3)), 5),
      tilt: clamp(-3, shape.tilt + step[base + 1], 3),
      fallTilt: clamp(-3, shape.fallTilt + step[base + 2], 3),
      middle: clamp(-4, shape.middle + step[base + 3], 6),
    },
    means: {
      logRise: means.logRise + step[m],
      holdS: means.holdS + step[m + 1],
      logFall: means.logFall + step[m + 2],
      logSlope: means.logSlope + step[m + 3],
      riseM: means.riseM + step[m + 4],
      riseSlopeM: means.riseSlopeM + step[m + 5],
      restS: means.restS + step[m + 6],
    },
  };
}

/** Products of the columns of the model with each other and with what it leaves unexplained. */
function dataEquations(linear: SetAcceleration, left: Float64Array, weight: number, base: number): NormalEquations {
  const many = SHAPE_UNKNOWNS + MEAN_UNKNOWNS;
  const equations = new NormalEquations(base + many, 2 * EACH - 1, many);
  const { columns, common } = linear;
  const product = (a: Float64Array, b: Float64Array, fromA: number, fromB: number): number => {
    const from = Math.max(fromA, fromB);
    const to = Math.min(fromA + a.length, fromB + b.length);
    let sum = 0;
    for (let i = from; i < to; i++) sum += a[i - fromA] * b[i - fromB];
    return weight * sum;
  };
  columns.forEach((one, index) => {
    equations.right[one.unknown] += product(one.values, left, one.from, 0);
    for (let b = index; b >= 0 && one.unknown - columns[b].unknown < 2 * EACH; b--) {
      equations.add(one.unknown, columns[b].unknown, product(one.values, columns[b].values, one.from, columns[b].from));
    }
    common.forEach((values, c) => {
      equations.add(base + c, one.unknown, product(one.values, values, one.from, 0));
    });
  });
  common.forEach((values, c) => {
    equations.right[base + c] += product(values, left, 0, 0);
    for (let d = 0; d <= c; d++) equations.add(base + c, base + d, product(values, common[d], 0, 0));
  });
  return equations;
}

/**
 * A set fitted as a whole: times and levels of its repetitions and the shape that its moves share.
 *
 * Damped least squares on the whitened acceleration, drawn to what is believed of sets in general.
 *
 * @param start - where the fit begins [-]
 * @param whitened - acceleration of the recording, 0 where nothing is present [m/s2]
 * @param noiseVariance - of the whitened noise, > 0 [m2/s4]
 * @param cells - grid and whitening [-]
 * @param scales - of the set [m, s]
 * @param settings - rounds and spreads [-]
 * @returns the fit; undefined when its equations have no solution [-]
 *
 * Source: Levenberg (1944), Q Appl Math 2:164-168; Marquardt (1963), J SIAM 11:431-441; model and priors ours
 */
export function jointFit(
  start: JointState,
  whitened: Float64Array,
  noiseVariance: number,
  cells: Cells,
  scales: JointScales,
  settings: BodySettings,
): JointFit | undefined {
  const base = start.repetitions.length * EACH;
  const costOf = (state: JointState, model: Float64Array): number => {
    let squares = 0;
    for (let i = 0; i < model.length; i++) squares += (whitened[i] - model[i]) ** 2;
    return squares / (2 * noiseVariance) + priorCost(state, scales, settings);
  };
  const equationsAt = (state: JointState): NormalEquations => {
    const linear = setAcceleration(state.repetitions, state.shape, cells, true);
    const left = whitened.map((value, i) => value - linear.model[i]);
    const equations = dataEquations(linear, left, 1 / noiseVariance, base);
    addPrior(equations, state, scales, settings);
    return equations;
  };
  let state = start;
  let cost = costOf(state, setAcceleration(state.repetitions, state.shape, cells, false).model);
  let damping = 1e-3;
  for (let round = 0; round < settings.jointRounds; round++) {
    const equations = equationsAt(state);
    let better = false;
    for (let attempt = 0; attempt < 6 && !better; attempt++) {
      const step = equations.factor(damping)?.solve(equations.right);
      if (step !== undefined) {
        const trial = moved(state, step);
        const trialCost = costOf(trial, setAcceleration(trial.repetitions, trial.shape, cells, false).model);
        if (trialCost < cost) {
          better = true;
          state = trial;
          cost = trialCost;
        }
      }
      damping = better ? Math.max(1e-6, damping / 5) : damping * 6;
    }
    if (!better) break;
  }
  const factor = equationsAt(state).factor(1e-9);
  return factor && { state, factor };
}
