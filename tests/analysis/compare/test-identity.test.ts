import { identityDifferences, type TestIdentity, testIdentity } from '@surae/analysis';
import { FLOOR, INCLINE_10, SLOW_TEMPO } from '@surae/shared';
import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';

const report = judged({ heightsM: Array<number>(6).fill(0.1) });
const others = { source: 'person', footwearWorn: 'shoe' };
const floor = testIdentity(report, FLOOR, others);

test('the same way of testing has no differences', () => {
  expect(identityDifferences(floor, testIdentity(report, FLOOR, { ...others }))).toEqual([]);
});

test('another surface is named with both values', () => {
  expect(identityDifferences(floor, testIdentity(report, INCLINE_10, others))).toEqual([
    { feature: 'parameter.surface', before: 'floor', after: 'incline10' },
    { feature: 'protocol', before: 'single-leg.floor', after: 'single-leg.incline10' },
  ]);
});

test('a number is shown with its unit', () => {
  const differences = identityDifferences(floor, testIdentity(report, SLOW_TEMPO, others));
  expect(differences).toContainEqual({ feature: 'parameter.cycleTarget', before: '2 s', after: '4 s' });
});

test.each([
  ['placement', { placement: 'foot' }],
  ['heights', { kind: 'body-rise' }],
  ['referenceUsed', { reference: { ...report.reference!, rule: 'best-two-of-familiarisation' } }],
] as const)('%s is a feature', (feature, change) => {
  const differences = identityDifferences(floor, testIdentity({ ...report, ...change }, FLOOR, others));
  expect(differences.map((one) => one.feature)).toEqual([feature]);
});

test('what is not known matches nothing, not even itself', () => {
  const unknown: TestIdentity = { ...floor, source: null };
  expect(identityDifferences(unknown, unknown)).toEqual([{ feature: 'source', before: null, after: null }]);
  expect(identityDifferences(testIdentity({ ...report, reference: null }, FLOOR, others), floor)).toEqual([
    { feature: 'referenceUsed', before: null, after: 'best-two-of-first-repetitions' },
  ]);
});

test('what only one of the two has is a difference', () => {
  expect(identityDifferences(floor, testIdentity(report, FLOOR, { source: 'person' }))).toEqual([
    { feature: 'footwearWorn', before: 'shoe', after: null },
  ]);
});

test('nothing that the caller adds can hide what the report says', () => {
  expect(testIdentity(report, FLOOR, { placement: 'trunk', protocol: 'another' })).toMatchObject({
    placement: 'heel',
    protocol: 'single-leg.floor',
  });
});
