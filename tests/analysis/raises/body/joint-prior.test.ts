import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import {
  addPrior,
  type JointState,
  MEAN_UNKNOWNS,
  priorCost,
} from '../../../../packages/analysis/src/raises/body/joint-prior.ts';
import { NormalEquations } from '../../../../packages/analysis/src/raises/body/normal-equations.ts';
import { EACH, SHAPE_UNKNOWNS } from '../../../../packages/analysis/src/raises/body/set-moves.ts';

const scales = { riseM: 0.05, riseSpread: 0.1, durationS: 1.8, places: [-1, 0, 1] };
const usual: JointState = {
  repetitions: [0, 1, 2].map((k) => ({
    startS: 2 * k,
    logRise: Math.log(0.8),
    holdS: 0.2,
    logFall: Math.log(0.8),
    topM: 0.05,
    bottomM: 0,
    joined: k < 2,
  })),
  shape: { ends: 1.8, tilt: -0.25, fallTilt: -0.25, middle: 0 },
  means: {
    logRise: Math.log(0.8),
    holdS: 0.2,
    logFall: Math.log(0.8),
    logSlope: 0,
    riseM: 0.05,
    riseSlopeM: 0,
    restS: 0.2,
  },
};

type Part = (one: JointState['repetitions'][number]) => Partial<JointState['repetitions'][number]>;
function changed(k: number, part: Part, state = usual): JointState {
  return { ...state, repetitions: state.repetitions.map((one, i) => (i === k ? { ...one, ...part(one) } : one)) };
}
const cost = (state: JointState): number => priorCost(state, scales, bodyDefaults);

test('a slower repetition as a whole costs less than one of which only the rise is slower', () => {
  const longer = Math.log(1.1);
  const whole = changed(2, (one) => ({
    logRise: one.logRise + longer,
    holdS: 1.1 * one.holdS,
    logFall: one.logFall + longer,
  }));
  const part = changed(2, (one) => ({ logRise: one.logRise + longer }));
  expect(cost(whole) - cost(usual)).toBeLessThan(0.3 * (cost(part) - cost(usual)));
});

test('a pause costs less than its length would: it may be odd', () => {
  const later = (seconds: number): number =>
    cost(changed(2, (one) => ({ startS: one.startS + seconds }))) - cost(usual);
  expect(later(0.2)).toBeGreaterThan(2);
  expect(later(2)).toBeLessThan(6 * later(0.2));
});

test('repetitions that overlap cost more than a pause', () => {
  const by = (seconds: number): number => cost(changed(2, (one) => ({ startS: one.startS + seconds })));
  expect(by(-0.5)).toBeGreaterThan(2 * by(0.5));
});

test('a way down that mirrors the way up costs least', () => {
  const tilted = (tilt: number, fallTilt: number): number =>
    cost({ ...usual, shape: { ...usual.shape, tilt, fallTilt } });
  expect(tilted(-0.6, -0.6)).toBeLessThan(tilted(-0.6, 0.1));
});

test('the equations pull every unknown of a repetition down the slope of the cost', () => {
  const odd = changed(1, (one) => ({
    startS: one.startS + 0.07,
    logRise: one.logRise + 0.05,
    holdS: 0.16,
    logFall: one.logFall - 0.04,
    topM: 0.056,
    bottomM: 0.003,
  }));
  const many = SHAPE_UNKNOWNS + MEAN_UNKNOWNS;
  const equations = new NormalEquations(3 * EACH + many, 2 * EACH - 1, many);
  addPrior(equations, odd, scales, bodyDefaults);
  (['startS', 'logRise', 'holdS', 'logFall', 'topM', 'bottomM'] as const).forEach((name, index) => {
    const small = 1e-6;
    const to = (step: number): number => cost(changed(1, (one) => ({ [name]: one[name] + step }), odd));
    const slope = (to(small) - to(-small)) / (2 * small);
    expect(Math.abs(equations.right[EACH + index] + slope)).toBeLessThan(1e-4 * Math.abs(slope) + 1e-3);
  });
});
