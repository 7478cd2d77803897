import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUnfinishedNumber, parseNumber } from '../../packages/records/src/number.ts';
import { runs } from '../support/runs.ts';

describe('a number in a field', () => {
  test.each([
    ['0', 0],
    ['-0', -0],
    ['+1.5', 1.5],
    ['.5', 0.5],
    ['5.', 5],
    [' \t12.25 ', 12.25],
    ['1e3', 1000],
    ['-2.5E-2', -0.025],
    ['007', 7],
    ['1e-400', 0],
  ])('%j is %d', (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });

  test.each([
    ['', 'empty-field'],
    ['  ', 'empty-field'],
    ['-', 'not-a-number'],
    ['.', 'not-a-number'],
    ['e5', 'not-a-number'],
    ['1e', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['1_000', 'not-a-number'],
    ['1 000', 'not-a-number'],
    ['"1"', 'not-a-number'],
    ['--1', 'not-a-number'],
    ['１', 'not-a-number'],
    ['null', 'not-a-number'],
    ['12.5mm', 'not-a-number'],
    ['NaN', 'not-finite'],
    ['nan', 'not-finite'],
    ['-Infinity', 'not-finite'],
    ['inf', 'not-finite'],
    ['1.#INF', 'not-finite'],
    ['1e999', 'not-finite'],
    ['1,5', 'decimal-comma'],
    ['-0,25', 'decimal-comma'],
    [',5', 'decimal-comma'],
    ['1,5e3', 'decimal-comma'],
    ['1,234,567', 'not-a-number'],
  ])('%j is refused: %s', (text, fault) => {
    expect(parseNumber(text)).toBe(fault);
  });

  test('is every double that JavaScript writes, exactly', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(parseNumber(Object.is(value, -0) ? '-0' : String(value))).toBe(value);
      }),
      runs(300, 5000),
    );
  });

  test('is accepted only where Number() accepts the same text', () => {
    const text = fc.string({ unit: fc.constantFrom(...'0123456789+-.eE, xn'), maxLength: 8 });
    fc.assert(
      fc.property(text, (field) => {
        const value = parseNumber(field);
        if (typeof value === 'number') expect(value).toBe(Number(field));
        else if (field.trim() !== '' && Number.isFinite(Number(field))) expect(field).toMatch(/x/);
      }),
      runs(1000, 20_000),
    );
  });
});

test('what can be the start of a number is told from what cannot', () => {
  for (const start of ['', '-', '+', '.', '1', '1.', '-.', '1e', '1.5E-']) expect(isUnfinishedNumber(start)).toBe(true);
  for (const other of ['x', '1.5mm', 'NaN', '1,5', '1e5', '--']) expect(isUnfinishedNumber(other)).toBe(false);
});
