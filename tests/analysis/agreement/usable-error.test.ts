import { expect, test } from 'vitest';
import { boundedDeviation } from '../../../packages/analysis/src/agreement/measurement-error.ts';
import { usableError } from '../../../packages/analysis/src/agreement/usable-error.ts';
import { agreementDefaults } from '../../../packages/analysis/src/assess/defaults/agreement.ts';

const of = (pairs: number) =>
  usableError({ sem: boundedDeviation(2, pairs - 1, 0.95), df: pairs - 1 }, agreementDefaults.usable);

test('below 15 pairs an own error is shown and not used, up to 29 its upper bound is used, from 30 on the estimate', () => {
  expect(of(14)).toEqual({ use: 'no', pairCount: 14, pairsNeeded: 15 });
  expect(of(15)).toMatchObject({ use: 'upper-bound', pairCount: 15 });
  expect(of(29)).toMatchObject({ use: 'upper-bound', pairCount: 29 });
  expect(of(30)).toEqual({ use: 'estimate', sem: 2, pairCount: 30 });
});

test('the cautious bound is exceeded by the true error in one of five samples: SciPy chi2.ppf(0.2, 14) = 9.4673', () => {
  const usable = of(15);
  expect(usable.use === 'no' ? 0 : usable.sem).toBeCloseTo(2 * Math.sqrt(14 / 9.46733), 5);
});
