import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numberIn, saysMissing } from '../../../packages/records/src/form/number-form.ts';
import { runs } from '../../support/runs.ts';

test.each([
  ['1.5', '.', null, 1.5],
  ['1,5', ',', null, 1.5],
  ['1,5', '.', null, undefined],
  ['1,234.5', '.', ',', 1234.5],
  ['1.234,5', ',', '.', 1234.5],
  ['1 234,5', ',', ' ', 1234.5],
  ['1\u202f234,5', ',', ' ', 1234.5],
  ["1'234.5", '.', "'", 1234.5],
  ['12,34.5', '.', ',', undefined],
  ['0,123', '.', ',', undefined],
  ['1,2345', '.', ',', undefined],
  ['\u22123.5', '.', null, -3.5],
  ['1e3', '.', null, 1000],
  ['1e999', '.', null, undefined],
  ['0x10', '.', null, undefined],
  ['', '.', null, undefined],
] as const)('%s with the marks %s and %s is %s', (text, decimal, thousands, value) => {
  expect(numberIn(text, { decimal, thousands })).toBe(value);
});

test('every finite number that is written in a form is read as the same double', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      const text = String(value);
      expect(numberIn(text, { decimal: '.', thousands: null })).toBe(value);
      expect(numberIn(text.replace('.', ','), { decimal: ',', thousands: null })).toBe(value);
    }),
    runs(200, 5000),
  );
});

test('a missing value is said in words, and zero is none of them', () => {
  for (const text of ['NaN', '', ' ', '#N/A', '-', '1.#QNAN']) expect(saysMissing(text)).toBe(true);
  for (const text of ['0', '0.0', 'no', '-0']) expect(saysMissing(text)).toBe(false);
});
