import { expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import {
  addPartsPrior,
  partsMisfit,
  partsPrior,
  usualParts,
} from '../../../../packages/analysis/src/raises/heel/parts-prior.ts';

const size = 7;
const moveOf = (upS: number, holdS: number, downS: number): Float64Array =>
  Float64Array.of(1, 1 + upS, 1 + upS + holdS, 1 + upS + holdS + downS, 0, 0.1, 0);
const empty = () => ({ matrix: new Float64Array(size * size), gradient: new Float64Array(size) });
const misfit = (p: Float64Array): number =>
  addPartsPrior(partsPrior([0.7, 0.2, 0.9], heelDefaults.parts), p, size, empty());

test('the usual parts are the medians', () => {
  const parts = usualParts([moveOf(0.7, 0.2, 0.9), moveOf(0.8, 0.1, 1), moveOf(3, 0.3, 0.8)]);
  [0.8, 0.2, 0.9].forEach((value, k) => expect(parts[k]).toBeCloseTo(value, 12));
});

test('a repetition like the others costs nothing and is not pulled', () => {
  const normal = empty();
  expect(
    addPartsPrior(partsPrior([0.7, 0.2, 0.9], heelDefaults.parts), moveOf(0.7, 0.2, 0.9), size, normal),
  ).toBeCloseTo(0, 12);
  expect(Math.max(...normal.gradient.map(Math.abs))).toBeLessThan(1e-9);
});

test('the misfit alone is that with which the normal equations are added to', () => {
  for (const p of [moveOf(0.77, 0.2, 0.83), moveOf(0.7, 0.2, 0.9), moveOf(2, 0.1, 0.4)]) {
    expect(partsMisfit(partsPrior([0.7, 0.2, 0.9], heelDefaults.parts), p)).toBe(misfit(p));
  }
});

test('a slower repetition costs little, one whose parts change apart costs much', () => {
  expect(misfit(moveOf(0.77, 0.22, 0.99))).toBeLessThan(0.5);
  expect(misfit(moveOf(0.77, 0.2, 0.83))).toBeGreaterThan(5);
});

test('a shift in time changes nothing', () => {
  const later = moveOf(0.75, 0.2, 0.9).map((value, k) => (k < 4 ? value + 20 : value));
  expect(misfit(later)).toBeCloseTo(misfit(moveOf(0.75, 0.2, 0.9)), 9);
});

test('gradient and usual parts answer the cost, as differences show', () => {
  const p = moveOf(0.72, 0.21, 0.89);
  const usualS = [0.7, 0.2, 0.9];
  const prior = partsPrior(usualS, heelDefaults.parts);
  const normal = empty();
  const shared = {
    first: 1,
    size: 4,
    matrix: new Float64Array(16),
    gradient: new Float64Array(4),
    coupling: new Float64Array(size * 4),
  };
  addPartsPrior(prior, p, size, { ...normal, shared });
  const step = 1e-6;
  for (let k = 0; k < 4; k++) {
    const cost = (by: number): number =>
      addPartsPrior(
        prior,
        p.map((value, i) => (i === k ? value + by : value)),
        size,
        empty(),
      );
    // gradients are kept as minus half of the slope
    expect(normal.gradient[k]).toBeCloseTo(-(cost(step) - cost(-step)) / (4 * step), 3);
  }
  for (let k = 0; k < 3; k++) {
    const cost = (by: number): number =>
      addPartsPrior({ ...prior, usualS: usualS.map((value, i) => (i === k ? value + by : value)) }, p, size, empty());
    expect(shared.gradient[1 + k]).toBeCloseTo(-(cost(step) - cost(-step)) / (4 * step), 3);
  }
  // the same coupling in rows that are longer and begin later
  const wide = { ...shared, coupling: new Float64Array(1 + size * 6), couplingAt: 1, couplingSize: 6 };
  addPartsPrior(prior, p, size, { ...empty(), shared: wide });
  for (let m = 0; m < size; m++) {
    for (let a = 0; a < 4; a++) expect(wide.coupling[1 + 6 * m + a]).toBe(shared.coupling[4 * m + a]);
  }
  // Longer usual parts pull the end of a part later and its start earlier.
  expect(shared.coupling[1 * 4 + 1]).toBeLessThan(0);
  expect(shared.coupling[0 * 4 + 1]).toBeGreaterThan(0);
});

test('the rule is read: parts that may spread cost less', () => {
  const slower = moveOf(0.9, 0.2, 0.9);
  const by = (ownSpread: number): number =>
    addPartsPrior(partsPrior([0.7, 0.2, 0.9], { ...heelDefaults.parts, ownSpread }), slower, size, empty());
  expect(by(0.3)).toBeLessThan(0.2 * by(0.03));
});
