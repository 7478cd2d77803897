import { InputError, ownErrorsFrom } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

const ID = 'single-leg.incline10';
const small = { protocol: ID, pairs: 20, standard_error: 1.9, standard_error_upper_80: 2.3 };
const read = (json: unknown, protocolId?: string) =>
  ownErrorsFrom(json, { name: 'own.json', ...(protocolId === undefined ? {} : { protocolId }) });
/** Each ratio of the second visit 5 % above or below that of the first, in turn. */
const pairs = (count: number): number[][] =>
  Array.from({ length: count }, (_, i) => [0.9, 0.9 * Math.exp(i % 2 === 0 ? 0.05 : -0.05)]);

test('the small object is an error of a count, or of a force in the unit that it names', () => {
  expect(read(small)).toEqual({
    protocolId: ID,
    test: {
      standardError: 1.9,
      standardErrorUpper80: 2.3,
      scale: 'natural',
      unit: '1',
      pairs: 20,
      source: { id: 'own:own.json', citation: 'own repeated tests in own.json', group: 'own people' },
    },
    ratios: null,
  });
  const share = { ...small, scale: 'log', unit: 'N', source: 'ours', group: 'runners' };
  expect(read(share, 'isometric.seated').test).toMatchObject({
    scale: 'log',
    unit: 'N',
    source: { citation: 'ours', group: 'runners' },
  });
});

test('an agreement gives its error, and the bound where it was worked out', () => {
  const group = { standard_error: { value: 40, low: 30, high: 60 } };
  const found = (use: object) =>
    read({ unit: 'N', across: 'day', groups: [{ ...group, standard_error_use: use }] }, 'isometric.seated').test;
  expect(found({ use: 'upper_bound', pairs: 20, standard_error: 45 })).toMatchObject({
    standardError: 40,
    standardErrorUpper80: 45,
    pairs: 20,
    source: { citation: 'own repeated tests in own.json, across day' },
  });
  expect(found({ use: 'no', pairs: 8, standard_error: null })).toMatchObject({ standardErrorUpper80: 40, pairs: 8 });
});

test('rows of repeated ratios become the error of one ratio and its bound; they come alone or with the error of a test', () => {
  const { test: alone, ratios } = read({ protocol: ID, ratios: pairs(16) });
  // by hand: differences of +-0.05 about their mean of 0, variance 16 x 0.05^2 / 15, of which each visit has half
  const error = Math.sqrt((16 * 0.05 ** 2) / 15 / 2);
  // upper bound with 15 degrees of freedom: chi-square 0.2 quantile 10.30696 (SciPy 1.17.1, chi2.ppf(0.2, 15))
  expect([ratios!.logError, ratios!.logErrorUpper]).toBeCloseToEach([error, error * Math.sqrt(15 / 10.30696)], {
    rtol: 1e-6,
    atol: 0,
  });
  expect([alone, ratios!.pairs]).toEqual([null, 16]);
  expect(read({ ...small, ratios: pairs(16) })).toMatchObject({ test: { pairs: 20 }, ratios: { pairs: 16 } });
});

test.each([
  ['no table', 0.9],
  ['words', [['high', 'low']]],
  ['one person', [[0.9, 1]]],
  ['one visit', [[0.9], [1]]],
  ['rows of unlike length', [[0.9, 1], [1]]],
  [
    'a ratio of zero',
    [
      [0.9, 0],
      [1, 1],
    ],
  ],
])('%s is refused as ratios', (_, ratios) => {
  expect(() => read({ protocol: ID, ratios })).toThrow(/^own\.json, ratios: expected two or more rows/);
});

test('ratios that never differ are no proof that there is no error', () => {
  const same = [
    [1, 1],
    [0.9, 0.9],
  ];
  expect(() => read({ protocol: ID, ratios: same })).toThrow('own.json, ratios: expected ratios that differ');
});

test('what cannot be taken says its place, what was expected and what came', () => {
  expect(() => read([])).toThrow(
    new InputError('out-of-range', {
      argument: 'own.json',
      expected: 'one object with the own reliability',
      actual: 'something else',
    }),
  );
  expect(() => read({ ...small, protocol: undefined })).toThrow(
    /^own\.json, protocol: expected one of .*, got nothing$/,
  );
  expect(() => read({ ...small, pairs: 2.5 })).toThrow('own.json, pairs: expected a whole number, got 2.5');
  expect(() => read({ ...small, standard_error_upper_80: 1 })).toThrow(
    'own.json, standard_error_upper_80: expected no less',
  );
  expect(() => read({ groups: [{}, {}], unit: 'reps', across: 'day' }, ID)).toThrow(
    'own.json, groups: expected one group, got 2',
  );
});
