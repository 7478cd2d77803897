import { InputError, ownRatioError } from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRandom, gaussian } from '../../../packages/analysis/src/signal/random.ts';
import '../../support/close.ts';
import { runs } from '../../support/runs.ts';

const source = { id: 'own', citation: 'this clinic, two visits', group: 'people in pain, standing' };

describe('the error of repeated ratios', () => {
  test('by hand: logarithms that differ by 0.2, 0 and -0.2 between two visits have an error of 0.2 / root 2', () => {
    const found = ownRatioError(
      [
        [1, Math.exp(0.2)],
        [0.7, 0.7],
        [0.9, 0.9 * Math.exp(-0.2)],
      ],
      0.8,
      source,
    )!;
    expect([found.logError]).toBeCloseToEach([0.2 / Math.SQRT2], { rtol: 1e-12, atol: 0 });
    // chi-square with 2 degrees of freedom has the quantile -2 ln(1 - p): at 0.2 it is 0.446287
    expect([found.logErrorUpper]).toBeCloseToEach([(0.2 / Math.SQRT2) * Math.sqrt(2 / 0.4462871026)], {
      rtol: 1e-8,
      atol: 0,
    });
    expect(found).toMatchObject({ pairs: 3, source });
  });

  test('a day that both legs share is not counted, where errors of single legs count it twice', () => {
    const random = createRandom(41);
    const [ofDay, ofLeg] = [0.1, 0.03];
    const ratios = Array.from({ length: 600 }, () => {
      const usual = -0.1 + 0.2 * gaussian(random);
      return [0, 1].map(() => {
        const day = ofDay * gaussian(random);
        const [sore, other] = [usual + day + ofLeg * gaussian(random), day + ofLeg * gaussian(random)];
        return Math.exp(sore - other);
      });
    });
    const { logError } = ownRatioError(ratios, 0.8, source)!;
    // four standard errors of a standard deviation of 600 pairs: 4 / root 1200
    expect([logError]).toBeCloseToEach([ofLeg * Math.SQRT2], { rtol: 0.12, atol: 0 });
    expect(logError).toBeLessThan(0.4 * Math.hypot(ofDay, ofLeg) * Math.SQRT2);
  });

  const ratio = fc.double({ min: 0.2, max: 3, noNaN: true });
  const table = fc.array(fc.tuple(ratio, ratio), { minLength: 3, maxLength: 20 });

  test('is that of the logarithms, whichever leg stands above, and whatever all ratios of a visit share', () => {
    fc.assert(
      fc.property(table, fc.double({ min: 0.5, max: 2, noNaN: true }), (rows, factor) => {
        const differences = rows.map(([a, b]) => Math.log(a / b));
        const middle = differences.reduce((sum, one) => sum + one, 0) / rows.length;
        const squares = differences.reduce((sum, one) => sum + (one - middle) ** 2, 0);
        fc.pre(squares > 1e-6);
        const expected = Math.sqrt(squares / (rows.length - 1) / 2);
        for (const form of [rows, rows.map(([a, b]) => [1 / a, 1 / b]), rows.map(([a, b]) => [a, b * factor])]) {
          const found = ownRatioError(form, 0.8, source)!;
          expect([found.logError]).toBeCloseToEach([expected], { rtol: 1e-9, atol: 0 });
          expect(found.logErrorUpper).toBeGreaterThan(found.logError);
          expect(found.pairs).toBe(rows.length);
        }
      }),
      runs(100, 2000),
    );
  });

  test('copied ratios are no error of zero, and impossible arguments are refused', () => {
    expect(
      ownRatioError(
        [
          [0.7, 0.7],
          [0.9, 0.9],
        ],
        0.8,
        source,
      ),
    ).toBeNull();
    expect(() =>
      ownRatioError(
        [
          [0.7, 0],
          [0.9, 0.9],
        ],
        0.8,
        source,
      ),
    ).toThrow(InputError);
    expect(() => ownRatioError([[0.7, 0.8]], 0.8, source)).toThrow(InputError);
    expect(() =>
      ownRatioError(
        [
          [0.7, 0.8],
          [1, 1],
        ],
        0.5,
        source,
      ),
    ).toThrow('cautiousLevel');
  });
});
