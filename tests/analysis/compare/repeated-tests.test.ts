import { worthOfRepeated } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

test('each degree of freedom of the residual is worth a pair, and one pair is spent on the mean', () => {
  const pairsOf = (people: number, days: number): number => worthOfRepeated({ standardError: 1, people, days }).pairs;
  // two days: a pair a person; three days: two a person, one spent
  expect([pairsOf(16, 2), pairsOf(16, 3), pairsOf(2, 2)]).toEqual([16, 31, 2]);
});

test('the bound is that of chi-square with the residual degrees of freedom', () => {
  const { standardErrorUpper80 } = worthOfRepeated({ standardError: 2, people: 16, days: 2 });
  // chi-square 0.2 quantile with 15 degrees of freedom 10.30696 (SciPy 1.17.1, chi2.ppf(0.2, 15))
  expect([standardErrorUpper80]).toBeCloseToEach([2 * Math.sqrt(15 / 10.30696)], { rtol: 1e-6, atol: 0 });
});

test.each([
  [{ standardError: 0, people: 16, days: 2 }, 'standardError: expected > 0, got 0'],
  [{ standardError: 1, people: 1, days: 2 }, 'people: expected a whole number from 2, got 1'],
  [{ standardError: 1, people: 16, days: 1.5 }, 'days: expected a whole number from 2, got 1.5'],
])('%o is refused', (tests, sentence) => {
  expect(() => worthOfRepeated(tests)).toThrow(sentence);
});
