import { describe, expect, test } from 'vitest';
import {
  butterworthHighPass,
  butterworthLowPass,
  type Section,
} from '../../../packages/analysis/src/signal/butterworth.ts';
import { filterZeroPhase } from '../../../packages/analysis/src/signal/zero-phase.ts';
import { arbitrarySignal } from '../../support/arbitraries.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';
import { commutesWithReversal, isLinear, keepsConstants, leavesInputUnchanged } from '../../support/laws.ts';

interface Case {
  kind: 'lowpass' | 'highpass';
  order: number;
  cutoffHz: number;
  sampleRateHz: number;
}

function sectionsOf({ kind, order, cutoffHz, sampleRateHz }: Case): Section[] {
  return (kind === 'lowpass' ? butterworthLowPass : butterworthHighPass)(order, cutoffHz, sampleRateHz);
}

const sixHz = butterworthLowPass(2, 6, 100);
const mean = [{ b0: 0.5, b1: 0.5, b2: 0, a1: 0, a2: 0 }];

describe('a signal filtered forward and backward', () => {
  test('with the mean of two neighbours gives the weights 1/4, 1/2, 1/4', () => {
    const filtered = filterZeroPhase(mean, Float64Array.of(0, 0, 0, 8, 0, 0, 0));
    expect(Array.from(filtered)).toEqual([0, 0, 2, 4, 2, 0, 0]);
  });

  test('a constant and a straight line come back as they were, ends included', () => {
    const line = Float64Array.from({ length: 60 }, (_, i) => 3 - 0.25 * i);
    expect(filterZeroPhase(mean, line)).toBeCloseToEach(line, { rtol: 1e-12, atol: 1e-12 });
    const flat = new Float64Array(60).fill(686.4655);
    expect(filterZeroPhase(sixHz, flat)).toBeCloseToEach(flat, { rtol: 1e-12, atol: 0 });
  });

  test('agrees with scipy.signal.sosfiltfilt over the whole signal, ends included, for low and high orders', () => {
    const reference = readReference<{ samples: number[]; cases: Case[] }, number[][]>('zero-phase.long');
    const samples = Float64Array.from(reference.input.samples);
    reference.input.cases.forEach((one, i) => {
      expect(filterZeroPhase(sectionsOf(one), samples)).toBeCloseToEach(reference.expected[i], reference);
    });
    expect(reference.expected.length).toBe(9);
  });

  test('agrees with scipy.signal.sosfiltfilt for signals as short as one sample', () => {
    const reference = readReference<(Case & { samples: number[] })[], number[][]>('zero-phase.short');
    reference.input.forEach((one, i) => {
      const filtered = filterZeroPhase(sectionsOf(one), Float64Array.from(one.samples));
      expect(filtered).toBeCloseToEach(reference.expected[i], reference);
    });
    expect(reference.expected.length).toBe(10);
  });

  test('a sine in the middle keeps its phase and loses the squared gain', () => {
    const samples = Float64Array.from({ length: 2000 }, (_, i) => Math.sin((2 * Math.PI * 6 * i) / 100));
    const filtered = filterZeroPhase(sixHz, samples);
    // uncorrected: half the amplitude at the cut-off
    expect(filtered.slice(900, 1100)).toBeCloseToEach(
      samples.slice(900, 1100).map((value) => value / 2),
      { rtol: 0, atol: 1e-9 },
    );
  });

  test('laws: linear, keeps constants, leaves its input alone', () => {
    isLinear((x) => filterZeroPhase(sixHz, x), arbitrarySignal(1, 60));
    keepsConstants((x) => filterZeroPhase(sixHz, x), arbitrarySignal(1, 60));
    leavesInputUnchanged((x) => filterZeroPhase(sixHz, x), arbitrarySignal(1, 60));
  });

  test('law: turning time round makes no difference where the signal rests at both ends', () => {
    const resting = arbitrarySignal(1, 80).map((middle) => {
      const samples = new Float64Array(middle.length + 400);
      samples.set(middle, 200);
      return samples;
    });
    commutesWithReversal((x) => filterZeroPhase(sixHz, x), resting, 1e-8);
  });

  test('an empty signal, a NaN and a filter without sections are refused', () => {
    expect(() => filterZeroPhase(sixHz, new Float64Array(0))).toThrow(expect.objectContaining({ code: 'too-short' }));
    expect(() => filterZeroPhase(sixHz, Float64Array.of(1, Number.NaN))).toThrow('NaN at index 1');
    expect(() => filterZeroPhase([], Float64Array.of(1))).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});
