import { expect, test } from 'vitest';
import { intraclassForms } from '../../../packages/analysis/src/agreement/intraclass.ts';
import { limitsOfAgreement } from '../../../packages/analysis/src/agreement/limits-of-agreement.ts';
import { meanSquares } from '../../../packages/analysis/src/agreement/mean-squares.ts';
import { boundedDeviation } from '../../../packages/analysis/src/agreement/measurement-error.ts';
import {
  intraclassWidth,
  peopleForError,
  peopleForIntraclass,
  peopleForLimits,
} from '../../../packages/analysis/src/agreement/planning.ts';
import '../../support/close.ts';
import { ratingRows } from '../../support/rating-fixture.ts';

test('the error is known to 34 % upwards with 30 pairs and to 25 % with 50, by the factors of chi-square', () => {
  // factors 1.3443 and 1.2461 of SciPy: 30 and 50 are the least that do
  expect([peopleForError(0.3444, 2, 0.95), peopleForError(0.2462, 2, 0.95)]).toEqual([30, 50]);
  const enough = peopleForError(0.3, 3, 0.95)!;
  const high = (people: number): number => boundedDeviation(1, (people - 1) * 2, 0.95).high;
  expect(high(enough)).toBeLessThanOrEqual(1.3);
  expect(high(enough - 1)).toBeGreaterThan(1.3);
});

test('the width is that of the interval that is computed from such a table', () => {
  const [{ estimate }] = intraclassForms(meanSquares(ratingRows('shrout-fleiss-1979')), 0.95);
  const { value, interval } = estimate!;
  expect([intraclassWidth(value, 6, 4, 0.95)]).toBeCloseToEach([interval!.high - interval!.low], {
    rtol: 1e-9,
    atol: 0,
  });
});

test('people for an intraclass correlation: close to the formula of Bonett (2002), and the least that do', () => {
  for (const [width, expected, repeats] of [
    [0.2, 0.8, 2],
    [0.1, 0.9, 3],
    [0.3, 0.7, 4],
  ] as const) {
    const people = peopleForIntraclass(width, expected, repeats, 0.95)!;
    const shares = (1 - expected) ** 2 * (1 + (repeats - 1) * expected) ** 2;
    const bonett = (8 * 1.959964 ** 2 * shares) / (repeats * (repeats - 1) * width ** 2) + 1;
    expect(Math.abs(people - bonett)).toBeLessThanOrEqual(Math.max(4, 0.08 * bonett));
    expect(intraclassWidth(expected, people, repeats, 0.95)).toBeLessThanOrEqual(width);
    expect(intraclassWidth(expected, people - 1, repeats, 0.95)).toBeGreaterThan(width);
  }
});

test('Bland & Altman: with 100 people a limit is known to about 0.34 SD, with 200 to 0.24', () => {
  // sqrt(3 / n) 1.96 s: 0.34 s and 0.24 s, from memory
  expect(peopleForLimits(0.34, 0.95)).toBeGreaterThan(95);
  expect(peopleForLimits(0.34, 0.95)).toBeLessThan(102);
  expect(Math.abs(peopleForLimits(0.24, 0.95)! - 200)).toBeLessThan(8);
  const people = peopleForLimits(0.5, 0.95)!;
  const half = (n: number): number => {
    const wave = Array.from({ length: n }, (_, i) => Math.sin(i));
    const { upper, sd } = limitsOfAgreement(
      wave,
      wave.map(() => 0),
      { level: 0.95, reach: 1.959963984540054, scale: 'difference' },
    )!;
    return (upper.high - upper.value) / sd;
  };
  expect(half(people)).toBeLessThanOrEqual(0.5);
  expect(half(people - 1)).toBeGreaterThan(0.5);
});

test('what no study can reach is not promised, and impossible wishes are refused', () => {
  expect(peopleForLimits(0.001, 0.95)).toBeUndefined();
  expect(peopleForError(0.0001, 2, 0.95)).toBeUndefined();
  expect(peopleForIntraclass(0.0001, 0.5, 2, 0.95)).toBeUndefined();
  expect(() => peopleForError(0, 2, 0.95)).toThrow('share');
  expect(() => peopleForError(0.1, 1, 0.95)).toThrow('repeats');
  expect(() => peopleForLimits(-1, 0.95)).toThrow('share');
  expect(() => peopleForLimits(1, 1)).toThrow('level');
  expect(() => peopleForIntraclass(1, 0.5, 2, 0.95)).toThrow('width');
  expect(() => intraclassWidth(1, 10, 2, 0.95)).toThrow('expected');
  expect(() => intraclassWidth(0.5, 1, 2, 0.95)).toThrow('people');
});
