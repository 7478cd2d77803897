import { expect, test } from 'vitest';
import { derivative } from '../../../packages/analysis/src/signal/derivative.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { isLinear, leavesInputUnchanged } from '../../support/laws.ts';

test('differences over two intervals inside and over one at the ends', () => {
  expect(Array.from(derivative(Float64Array.of(0, 1, 4, 9), 10))).toEqual([10, 20, 40, 50]);
});

test('two samples have one slope', () => {
  expect(Array.from(derivative(Float64Array.of(2, 5), 100))).toEqual([300, 300]);
});

test('a parabola has its exact slope everywhere inside', () => {
  const samples = Float64Array.from({ length: 50 }, (_, i) => 3 * (i / 20) ** 2);
  const rate = derivative(samples, 20).slice(1, -1);
  expect(rate).toBeCloseToEach(
    Float64Array.from({ length: 48 }, (_, i) => (6 * (i + 1)) / 20),
    { rtol: 1e-12, atol: 1e-12 },
  );
});

test('laws: linear, leaves its input alone', () => {
  isLinear((x) => derivative(x, 10), arbitrarySignal(2, 40));
  leavesInputUnchanged((x) => derivative(x, 10), arbitrarySignal(2, 40));
});

test('one sample and a rate of 0 are refused', () => {
  expect(() => derivative(Float64Array.of(1), 10)).toThrow(expect.objectContaining({ code: 'too-short' }));
  expect(() => derivative(Float64Array.of(1, 2), 0)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
});
