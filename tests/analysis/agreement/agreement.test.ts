import { expect, test } from 'vitest';
import { type AgreementSettings, agreementOf } from '../../../packages/analysis/src/agreement/agreement.ts';
import { agreementDefaults } from '../../../packages/analysis/src/assess/defaults/agreement.ts';
import { ratingRows } from '../../support/rating-fixture.ts';

const settings: AgreementSettings = { ...agreementDefaults, scale: 'difference', counts: false };

function ratings(values: (number | null)[][]) {
  const raters = values[0].map((_, i) => 'ABCDEF'[i]);
  return { subjects: values.map((_, i) => `P${i + 1}`), raters, values };
}

test('Weir (2005), data set A: one error, three detectable changes, six coefficients, one pair', () => {
  const found = agreementOf(ratings(ratingRows('weir-2005-a')), settings);
  expect(found.error!.sem.value).toBeCloseTo(7.5569, 4);
  expect(found.changes.map(({ level, change }) => [level, change.value.toFixed(2)])).toEqual([
    [0.95, '20.95'],
    [0.9, '17.58'],
    [0.8, '13.70'],
  ]);
  expect(found.intraclass).toHaveLength(6);
  expect(found.pairs).toHaveLength(1);
  expect(found.pairs[0].limits!.bias.value).toBe(2.75);
  expect(found.usable).toEqual({ use: 'no', pairCount: 8, pairsNeeded: 15 });
});

test('every pair of raters is compared once, in their order', () => {
  const found = agreementOf(ratings(ratingRows('shrout-fleiss-1979')), { ...settings, counts: true });
  expect(found.pairs.map(({ first, second }) => first + second)).toEqual(['AB', 'AC', 'AD', 'BC', 'BD', 'CD']);
  const last = found.pairs[5];
  expect(last.limits!.bias.value).toBeCloseTo((26 - 40) / 6, 12);
  expect(last.counts).toMatchObject({ setCount: 6, same: 0 });
});

test('a hole leaves its subject out, and the result says so', () => {
  const values: (number | null)[][] = ratingRows('weir-2005-a');
  const whole = agreementOf(ratings(values.slice(1)), settings);
  const holed = agreementOf(ratings([[146, null], ...values.slice(1)]), settings);
  expect(holed.leftOut).toEqual([{ subject: 'P1', missing: ['B'] }]);
  expect(holed.subjects).toHaveLength(7);
  expect(holed.error).toEqual(whole.error);
});

test('two raters who never differ have no error that could be known', () => {
  const found = agreementOf(
    ratings([
      [1, 1],
      [2, 2],
      [4, 4],
    ]),
    settings,
  );
  expect([found.error, found.usable, found.changes, found.pairs[0].limits]).toEqual([
    undefined,
    undefined,
    [],
    undefined,
  ]);
});
