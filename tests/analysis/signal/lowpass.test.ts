import { expect, test } from 'vitest';
import { lowPassZeroPhase } from '../../../packages/analysis/src/signal/lowpass.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { isLinear, leavesInputUnchanged } from '../../support/laws.ts';

test('a sine at the cut-off keeps its phase and 0.7071 of its size', () => {
  const samples = Float64Array.from({ length: 3000 }, (_, i) => Math.cos((2 * Math.PI * 6 * i) / 1000));
  const filtered = lowPassZeroPhase(samples, 1000, 6);
  expect(filtered.slice(1400, 1600)).toBeCloseToEach(
    samples.slice(1400, 1600).map((value) => value * Math.SQRT1_2),
    { rtol: 0, atol: 1e-6 },
  );
});

test('agrees with scipy.signal.sosfiltfilt with the cut-off corrected as Winter (2009) does', () => {
  interface Given {
    samples: number[];
    cases: { cutoffHz: number; sampleRateHz: number }[];
  }
  const reference = readReference<Given, number[][]>('lowpass.corrected');
  const samples = Float64Array.from(reference.input.samples);
  reference.input.cases.forEach(({ cutoffHz, sampleRateHz }, i) => {
    expect(lowPassZeroPhase(samples, sampleRateHz, cutoffHz)).toBeCloseToEach(reference.expected[i], reference);
  });
  expect(reference.expected.length).toBe(4);
});

test('laws: linear, leaves its input alone', () => {
  isLinear((x) => lowPassZeroPhase(x, 100, 6), arbitrarySignal(1, 60));
  leavesInputUnchanged((x) => lowPassZeroPhase(x, 100, 6), arbitrarySignal(1, 60));
});

test('law: a signal that comes later is filtered the same, only later', () => {
  const pulse = (at: number): Float64Array =>
    Float64Array.from({ length: 800 }, (_, i) => Math.exp(-(((i - at) / 15) ** 2)));
  const early = lowPassZeroPhase(pulse(350), 100, 6);
  const late = lowPassZeroPhase(pulse(420), 100, 6);
  expect(late.slice(270, 570)).toBeCloseToEach(early.slice(200, 500), { rtol: 0, atol: 1e-12 });
});

test('a cut-off at half the rate is refused', () => {
  expect(() => lowPassZeroPhase(Float64Array.of(1, 2), 12, 6)).toThrow(
    expect.objectContaining({ code: 'out-of-range' }),
  );
});
