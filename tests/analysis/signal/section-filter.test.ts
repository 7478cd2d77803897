import { describe, expect, test } from 'vitest';
import { butterworthHighPass, butterworthLowPass } from '../../../packages/analysis/src/signal/butterworth.ts';
import { SectionFilter } from '../../../packages/analysis/src/signal/section-filter.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

describe('the causal filter', () => {
  test('the mean of two neighbours, one sample at a time', () => {
    const filter = new SectionFilter([{ b0: 0.5, b1: 0.5, b2: 0, a1: 0, a2: 0 }]);
    expect([2, 2, 4, 8].map((x) => filter.step(x))).toEqual([2, 2, 3, 6]);
  });

  test('starts without a swing: a constant passes a low pass and is stopped by a high pass from the first sample', () => {
    const low = new SectionFilter(butterworthLowPass(4, 6, 100));
    const high = new SectionFilter(butterworthHighPass(2, 0.5, 100));
    for (let i = 0; i < 50; i++) {
      expect([low.step(700), high.step(700)]).toBeCloseToEach([700, 0], { rtol: 1e-12, atol: 1e-9 });
    }
  });

  test('can be put into the steady state of a value in mid-signal', () => {
    const filter = new SectionFilter(butterworthLowPass(2, 6, 100));
    filter.step(1);
    filter.step(5);
    filter.settle(3);
    expect([filter.step(3), filter.step(3)]).toBeCloseToEach([3, 3], { rtol: 1e-12, atol: 0 });
  });

  test('agrees with scipy.signal.sosfilt started from sosfilt_zi', () => {
    interface Case {
      order: number;
      cutoffHz: number;
      sampleRateHz: number;
    }
    const reference = readReference<{ samples: number[]; cases: Case[] }, number[][]>('section-filter.steady');
    reference.input.cases.forEach(({ order, cutoffHz, sampleRateHz }, i) => {
      const filter = new SectionFilter(butterworthLowPass(order, cutoffHz, sampleRateHz));
      expect(reference.input.samples.map((x) => filter.step(x))).toBeCloseToEach(reference.expected[i], reference);
    });
    expect(reference.expected.length).toBe(4);
  });

  test('a filter without sections is refused', () => {
    expect(() => new SectionFilter([])).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});
