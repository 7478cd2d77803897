import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import { moveLevels, moveSize } from '../../../../packages/analysis/src/raises/heel/move-model.ts';
import { moveShape } from '../../../../packages/analysis/src/raises/heel/move-shape.ts';
import { partsPrior } from '../../../../packages/analysis/src/raises/heel/parts-prior.ts';
import {
  assembleTogether,
  exponentsOf,
  roomForBlocks,
  roomTogether,
  sharedSize,
  stepTogether,
  tryTogether,
} from '../../../../packages/analysis/src/raises/heel/shape-equations.ts';
import { shapeSize } from '../../../../packages/analysis/src/raises/heel/shape-prior.ts';
import { whitening } from '../../../../packages/analysis/src/raises/heel/sway-noise.ts';

const usual = [0.7, 0.3, 0.9];
const shared = Float64Array.of(0.8, 0.6, 0.2, 0.1, 0.7, 0.75, -0.1, 0.2, ...usual);
const timesS = Float64Array.from({ length: 62 }, (_, i) => 0.05 * i);
const white = whitening({ swaySdM: 0.002, swayTimeS: 0.3, whiteSdM: 0.001 }, 0.05, new Float64Array(62).fill(1));

const moves = [0, 1, 2].map((k) => Float64Array.of(0.5, 1.2 + 0.02 * k, 1.52, 2.4, 0, 0.1 + 0.002 * k, 0.001));
const [up, down] = [moveShape(exponentsOf(shared, 0)), moveShape(exponentsOf(shared, shapeSize))];
const all = moves.map((p, k) => {
  const level = new Float64Array(timesS.length);
  moveLevels(p, timesS, up, down, level);
  return { timesS, level: level.map((value, i) => value + 0.0004 * Math.sin(i * (k + 1))), whitening: white };
});
const fit = { all, habit: partsPrior(usual, heelDefaults.parts), rule: heelDefaults.shape };

function costAt(of: readonly Float64Array[], at: Float64Array): number {
  const tried = roomTogether(all);
  tryTogether(fit, of, at, tried);
  return tried.cost;
}

function moved(values: Float64Array, a: number, by: number): Float64Array {
  return values.map((value, i) => (i === a ? value + by : value));
}

test('gradients answer the misfit, as differences show', () => {
  const tried = roomTogether(all);
  const blocks = roomForBlocks(all.length);
  tryTogether(fit, moves, shared, tried);
  assembleTogether(fit, tried, blocks);
  // gradients are kept as minus half of the slope
  for (let a = 0; a < sharedSize; a++) {
    const slope = (costAt(moves, moved(shared, a, 1e-4)) - costAt(moves, moved(shared, a, -1e-4))) / 2e-4;
    expect(Math.abs(blocks.sharedGradient[a] + slope / 2)).toBeLessThan(0.02 + 0.02 * Math.abs(slope));
  }
  for (let m = 0; m < moveSize; m++) {
    const other = (by: number): Float64Array[] => moves.map((p, k) => (k === 1 ? moved(p, m, by) : p));
    const slope = (costAt(other(1e-6), shared) - costAt(other(-1e-6), shared)) / 2e-6;
    expect(Math.abs(blocks.sides[1][m * (1 + sharedSize)] + slope / 2)).toBeLessThan(1 + 0.05 * Math.abs(slope));
  }
});

test('room that was used before gives the very same equations', () => {
  const blocks = roomForBlocks(all.length);
  const [tried, other] = [roomTogether(all), roomTogether(all)];
  tryTogether(fit, moves, moved(shared, 2, 3), other);
  assembleTogether(fit, other, blocks);
  tryTogether(fit, moves, shared, tried);
  assembleTogether(fit, tried, blocks);
  const fresh = roomForBlocks(all.length);
  assembleTogether(fit, tried, fresh);
  expect(blocks).toEqual(fresh);
});

test('a step with little damping solves the equations of all unknowns at once', () => {
  const blocks = roomForBlocks(all.length);
  const tried = roomTogether(all);
  tryTogether(fit, moves, moved(shared, 0, 0.05), tried);
  assembleTogether(fit, tried, blocks);
  const step = stepTogether(blocks, 0, moves)!;
  // the rows of the shared unknowns: shared matrix times their step, and the coupling with each repetition
  for (let a = 0; a < sharedSize; a++) {
    const entry = (i: number, j: number): number => blocks.shared[Math.max(i, j) * sharedSize + Math.min(i, j)];
    let sum = step.shared.reduce((whole, value, b) => whole + entry(a, b) * value, 0);
    for (let k = 0; k < all.length; k++) {
      for (let m = 0; m < moveSize; m++) sum += blocks.sides[k][m * (1 + sharedSize) + 1 + a] * step.moves[k][m];
    }
    expect(Math.abs(sum - blocks.sharedGradient[a])).toBeLessThan(1e-6 * (1 + Math.abs(blocks.sharedGradient[a])));
  }
  const next = moves.map((p, k) => p.map((value, m) => value + step.moves[k][m]));
  const nextShared = tried.shared.map((value, a) => value + step.shared[a]);
  expect(costAt(next, nextShared)).toBeLessThan(tried.cost);
});

test('a step closes a hold and does not turn it round', () => {
  // without a hold, and with ways that near the top more sharply than those of the fit: it would rather go down before it is up
  const sharp = moveShape({ start: 2, end: 1, spread: 0, tilt: 0 });
  const sharpDown = moveShape({ start: 1, end: 2, spread: 0, tilt: 0 });
  const closed = moves.map((p) => Float64Array.of(p[0], 1.3, 1.3, p[3], p[4], p[5], p[6]));
  const pointed = closed.map((p) => {
    const level = new Float64Array(timesS.length);
    moveLevels(p, timesS, sharp, sharpDown, level);
    return { timesS, level, whitening: white };
  });
  const set = { all: pointed, habit: undefined, rule: heelDefaults.shape };
  const soft = Float64Array.of(Math.log(2), Math.log(4), 0, 0, Math.log(4), Math.log(2), 0, 0, ...usual);
  const blocks = roomForBlocks(pointed.length);
  const tried = roomTogether(pointed);
  tryTogether(set, closed, soft, tried);
  assembleTogether(set, tried, blocks);
  const { moves: steps } = stepTogether(blocks, 1e-3, closed)!;
  steps.forEach((step, k) => {
    expect(Math.abs(closed[k][2] + step[2] - closed[k][1] - step[1])).toBeLessThan(1e-6);
    expect(Math.abs(step[1])).toBeGreaterThan(1e-4);
  });
});
