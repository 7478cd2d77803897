import { describe, expect, test } from 'vitest';
import {
  butterworthHighPass,
  butterworthLowPass,
  type Section,
  twoPassCutoffHz,
} from '../../../packages/analysis/src/signal/butterworth.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

/** Gain of sections at a frequency, straight from the definition H(e^jw). */
function gainAt(sections: readonly Section[], frequencyHz: number, sampleRateHz: number): number {
  const w = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const size = (c0: number, c1: number, c2: number): number =>
    Math.hypot(c0 + c1 * Math.cos(w) + c2 * Math.cos(2 * w), c1 * Math.sin(w) + c2 * Math.sin(2 * w));
  return sections.reduce((gain, s) => (gain * size(s.b0, s.b1, s.b2)) / size(1, s.a1, s.a2), 1);
}

function multiplyOut(factors: readonly (readonly number[])[]): number[] {
  return factors.reduce<number[]>(
    (product, factor) => {
      const next = new Array<number>(product.length + factor.length - 1).fill(0);
      product.forEach((a, i) => factor.forEach((b, j) => (next[i + j] += a * b)));
      return next;
    },
    [1],
  );
}

/** Sections as one fraction, without the zeros that first-order sections leave at its end. */
function fraction(sections: readonly Section[], order: number): { b: number[]; a: number[] } {
  const b = multiplyOut(sections.map((s) => [s.b0, s.b1, s.b2]));
  const a = multiplyOut(sections.map((s) => [1, s.a1, s.a2]));
  return { b: b.slice(0, order + 1), a: a.slice(0, order + 1) };
}

const close = { rtol: 1e-9, atol: 1e-12 };

describe('Butterworth sections', () => {
  test.each([
    // Winter (2009) prints 0.067455, 0.134911, 1.14298 and -0.412802 for a tenth of the rate
    { cutoffHz: 10, rateHz: 100, b0: 0.067455273889072, a1: -1.142980502539901, a2: 0.412801598096189 },
    { cutoffHz: 6, rateHz: 100, b0: 0.027859766117136, a1: -1.475480443592646, a2: 0.58691950806119 },
    { cutoffHz: 10, rateHz: 1000, b0: 0.00094469184384, a1: -1.911197067426073, a2: 0.914975834801434 },
    { cutoffHz: 20, rateHz: 1000, b0: 0.003621681514929, a1: -1.822694925196308, a2: 0.837181651256023 },
    { cutoffHz: 50, rateHz: 1000, b0: 0.020083365564211, a1: -1.561018075800718, a2: 0.641351538057563 },
    // by hand: k = tan(pi/4) = 1, so b0 = 1 / (2 + sqrt 2), a1 = 0, a2 = (2 - sqrt 2) / (2 + sqrt 2)
    { cutoffHz: 25, rateHz: 100, b0: 1 / (2 + Math.SQRT2), a1: 0, a2: (2 - Math.SQRT2) / (2 + Math.SQRT2) },
  ])('second order at $cutoffHz of $rateHz Hz has the known coefficients', ({ cutoffHz, rateHz, b0, a1, a2 }) => {
    const [section] = butterworthLowPass(2, cutoffHz, rateHz);
    const { b0: g0, b1: g1, b2: g2, a1: g3, a2: g4 } = section;
    expect([g0, g1, g2, g3, g4]).toBeCloseToEach([b0, 2 * b0, b0, a1, a2], { rtol: 1e-11, atol: 1e-12 });
  });

  test('a first-order low pass at a quarter of the rate is the mean of two neighbours', () => {
    expect(butterworthLowPass(1, 25, 100)).toEqual([
      {
        b0: expect.closeTo(0.5, 12) as number,
        b1: expect.closeTo(0.5, 12) as number,
        b2: 0,
        a1: expect.closeTo(0, 12) as number,
        a2: 0,
      },
    ]);
  });

  test('every order multiplied out agrees with scipy.signal.butter', () => {
    interface Design {
      kind: 'lowpass' | 'highpass';
      order: number;
      cutoffHz: number;
      sampleRateHz: number;
    }
    const reference = readReference<Design[], { b: number[]; a: number[] }[]>('butterworth.design');
    expect(reference.input.length).toBeGreaterThan(60);
    reference.input.forEach(({ kind, order, cutoffHz, sampleRateHz }, i) => {
      const sections = (kind === 'lowpass' ? butterworthLowPass : butterworthHighPass)(order, cutoffHz, sampleRateHz);
      const { b, a } = fraction(sections, order);
      expect(b).toBeCloseToEach(reference.expected[i].b, { rtol: 1e-7, atol: 1e-13 });
      expect(a).toBeCloseToEach(reference.expected[i].a, reference);
    });
  });

  test('the gain is that of the definition, 1 / sqrt(1 + (tan / tan_c)^(2 order)), at every frequency', () => {
    for (const order of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const low = butterworthLowPass(order, 6, 100);
      const high = butterworthHighPass(order, 6, 100);
      for (const frequencyHz of [0.5, 3, 6, 12, 30, 49]) {
        const ratio = Math.tan((Math.PI * frequencyHz) / 100) / Math.tan((Math.PI * 6) / 100);
        expect([gainAt(low, frequencyHz, 100), gainAt(high, frequencyHz, 100)]).toBeCloseToEach(
          [1 / Math.sqrt(1 + ratio ** (2 * order)), 1 / Math.sqrt(1 + ratio ** (-2 * order))],
          close,
        );
      }
    }
  });

  test.each([
    [0, 6, 100],
    [9, 6, 100],
    [1.5, 6, 100],
    [2, 0, 100],
    [2, 50, 100],
    [2, 6, 0],
    [2, Number.NaN, 100],
  ])('order %d at %d of %d Hz is refused', (order, cutoffHz, rateHz) => {
    expect(() => butterworthLowPass(order, cutoffHz, rateHz)).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
    expect(() => butterworthHighPass(order, cutoffHz, rateHz)).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
    expect(() => twoPassCutoffHz(cutoffHz, rateHz, order)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});

describe('correction for two passes', () => {
  test.each([
    // Winter (2009), tan(pi fc / fs) divided by C = 0.802243
    { cutoffHz: 10, rateHz: 100, b0: 0.094446743885, a1: -0.962641308844, a2: 0.340428284384 },
    { cutoffHz: 6, rateHz: 100, b0: 0.040594681447, a1: -1.354748815199, a2: 0.517127540989 },
    { cutoffHz: 20, rateHz: 1000, b0: 0.005505744328, a1: -1.779406303736, a2: 0.80142928105 },
  ])('at $cutoffHz of $rateHz Hz gives the coefficients of Winter', ({ cutoffHz, rateHz, b0, a1, a2 }) => {
    const [section] = butterworthLowPass(2, twoPassCutoffHz(cutoffHz, rateHz, 2), rateHz);
    expect([section.b0, section.a1, section.a2]).toBeCloseToEach([b0, a1, a2], { rtol: 1e-10, atol: 0 });
  });

  test('the correction factors are those of Robertson & Dowling (2003)', () => {
    // far below the rate tan is straight, and the cut-off is simply divided by C: second order 0.802243
    expect([1 / (twoPassCutoffHz(0.01, 1000, 2) / 0.01)]).toBeCloseToEach([0.802243], { rtol: 1e-6, atol: 0 });
    expect([1 / (twoPassCutoffHz(0.01, 1000, 1) / 0.01)]).toBeCloseToEach([0.643594], { rtol: 1e-6, atol: 0 });
  });

  test('two corrected passes have half power at the cut-off for any order, two plain ones a quarter', () => {
    for (const order of [1, 2, 3, 4, 8]) {
      for (const [cutoffHz, rateHz] of [
        [6, 100],
        [6, 1000],
        [45, 100],
      ]) {
        const corrected = butterworthLowPass(order, twoPassCutoffHz(cutoffHz, rateHz, order), rateHz);
        const plain = butterworthLowPass(order, cutoffHz, rateHz);
        expect([gainAt(corrected, cutoffHz, rateHz) ** 4, gainAt(plain, cutoffHz, rateHz) ** 4]).toBeCloseToEach(
          [0.5, 0.25],
          close,
        );
      }
    }
  });

  test.each([
    // where two uncorrected passes really have half power, as a share of the cut-off
    [10, 100, 0.8117],
    [6, 100, 0.8056],
    [10, 1000, 0.8023],
  ])('two uncorrected passes at %d of %d Hz have half power at %d of the cut-off', (cutoffHz, rateHz, share) => {
    const gain = gainAt(butterworthLowPass(2, cutoffHz, rateHz), share * cutoffHz, rateHz) ** 2;
    // four printed digits of the share are good for two parts in ten thousand of the gain
    expect([gain]).toBeCloseToEach([Math.SQRT1_2], { rtol: 2e-4, atol: 0 });
  });
});
