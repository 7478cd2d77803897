import { changeZone, InputError } from '@surae/analysis';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { runs } from '../../support/runs.ts';

describe('detectable change at 95 % from a standard error (Weir 2005)', () => {
  test.each([
    // Ross & Fontenot 2000; Byrne 2017: repetitions, work, height; Glaied & Whiteley 2025: 118 N
    [2.07, 5.74, 0.005],
    [6.7, 18.57, 0.005],
    [419, 1161, 0.5],
    [0.8, 2.22, 0.005],
    [42.6, 118, 0.5],
    // Rhodes 2022 Int J Sports Phys Ther 17:286: errors in percent, so that the printed 25.19 to 34.56 are percent and no newtons
    [9.09, 25.19, 0.01],
    [12.47, 34.56, 0.01],
    // Weir 2005, data set A: standard error 7.5569
    [7.5569, 20.947, 0.0005],
  ])('%d gives %d', (standardError, expected, within) => {
    expect([changeZone(0, standardError).at95]).toBeCloseToEach([expected], { rtol: 0, atol: within });
  });

  test('Rhodes 2022: the limits of agreement imply errors of 150 to 200 N, far from a change of 35 N', () => {
    for (const [low, high, expected] of [
      [-494.76, 352.49, 152.8],
      [-591.3, 523.82, 201.2],
    ]) {
      const standardError = (high - low) / 2 / 1.96 / Math.SQRT2;
      expect([standardError]).toBeCloseToEach([expected], { rtol: 0, atol: 0.1 });
      expect(changeZone(35, standardError).zone).toBe('cannot-tell');
    }
  });

  test('half the limits of agreement of 6.25 is an error of 2.25, and a change of 6.25 again', () => {
    const standardError = 6.25 / 1.96 / Math.SQRT2;
    expect([standardError]).toBeCloseToEach([2.25], { rtol: 0, atol: 0.005 });
    expect([changeZone(0, standardError).at95]).toBeCloseToEach([6.25], { rtol: 1e-12, atol: 0 });
  });

  test('worked case: 19 to 24 repetitions with 2.25 lies between 4.1 and 6.2, with 6.7 below both', () => {
    const published = changeZone(5, 2.25);
    expect([published.at80, published.at95]).toBeCloseToEach([4.1, 6.2], { rtol: 0, atol: 0.05 });
    expect(published.zone).toBe('possible');
    expect(changeZone(5, 6.7).zone).toBe('cannot-tell');
  });

  test('worked case: 75 N more with 42.6 N cannot be told', () => {
    expect(changeZone(75, 42.6).zone).toBe('cannot-tell');
  });
});

test('reliable change index, Jacobson & Truax 1991: sd 7.5, r 0.80, 47.5 to 32.5 is -3.162', () => {
  const standardError = 7.5 * Math.sqrt(1 - 0.8);
  const found = changeZone(32.5 - 47.5, standardError);
  const ofDifference = found.at95 / 1.96;
  expect([standardError, ofDifference, found.index, found.at95]).toBeCloseToEach([3.3541, 4.7434, -3.1623, 9.297], {
    rtol: 0,
    atol: 0.0005,
  });
  expect(found.zone).toBe('likely-real');
});

test('the verdicts by detectable change and by reliable change agree', () => {
  const positive = fc.double({ min: 0.01, max: 1e3, noNaN: true });
  const reliability = fc.double({ min: 0, max: 0.99, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: -1e3, max: 1e3, noNaN: true }), positive, reliability, (change, sd, r) => {
      const found = changeZone(change, sd * Math.sqrt(1 - r));
      // the index by its own formula, sqrt(2 (SD sqrt(1 - r))^2), and not by ours
      const index = change / Math.sqrt(2 * (sd * Math.sqrt(1 - r)) ** 2);
      fc.pre(Math.abs(Math.abs(index) - 1.96) > 1e-9 && Math.abs(Math.abs(index) - 1.28) > 1e-9);
      expect(found.zone === 'likely-real').toBe(Math.abs(index) > 1.96);
      expect(Math.abs(change) > found.at95).toBe(Math.abs(index) > 1.96);
      expect(found.zone === 'cannot-tell').toBe(Math.abs(change) <= found.at80);
    }),
    runs(300, 5000),
  );
});

test('a change down is judged like one up, and no change cannot be told', () => {
  for (const change of [7, 5, 3]) {
    expect(changeZone(-change, 2.25).zone).toBe(changeZone(change, 2.25).zone);
  }
  expect(changeZone(0, 2.25)).toMatchObject({ index: 0, zone: 'cannot-tell' });
});

test('without an error there is no detectable change', () => {
  for (const standardError of [0, -1, Number.NaN]) {
    expect(() => changeZone(5, standardError)).toThrow(InputError);
  }
  expect(() => changeZone(Number.NaN, 2)).toThrow(InputError);
});
