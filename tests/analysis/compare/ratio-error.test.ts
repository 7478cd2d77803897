import { type OwnRatioError, ratioErrorOf } from '@surae/analysis';
import { describe, expect, test } from 'vitest';

const source = { id: 'own', citation: 'this clinic, two visits', group: 'people in pain, standing' };

describe('which error a ratio rests on', () => {
  const own = (pairs: number): OwnRatioError => ({ logError: 0.04, logErrorUpper: 0.05, pairs, source });

  test.each([
    [14, 'sides-independent', 'too-few-pairs', 0.1],
    [15, 'own-ratios', 'used-with-margin', 0.05],
    [29, 'own-ratios', 'used-with-margin', 0.05],
    [30, 'own-ratios', 'used', 0.04],
    [Number.NaN, 'sides-independent', 'too-few-pairs', 0.1],
  ] as const)('%d pairs: %s, %s', (pairs, from, said, logU) => {
    const found = ratioErrorOf(0.1, own(pairs));
    expect(found).toMatchObject({ from, own: said, pairs, logU });
    expect(found.source).toEqual(from === 'own-ratios' ? { ...source, kind: 'own-clinic', people: pairs } : null);
  });

  test('without any the sides are taken as independent', () => {
    expect(ratioErrorOf(0.1, null)).toEqual({
      from: 'sides-independent',
      own: 'none',
      pairs: null,
      source: null,
      logU: 0.1,
    });
  });

  test('the own error counts even where it is the larger one', () => {
    expect(ratioErrorOf(0.01, own(40)).logU).toBe(0.04);
  });

  test('errors that are none are refused', () => {
    expect(() => ratioErrorOf(-1, null)).toThrow('independentLogU');
    expect(() => ratioErrorOf(0.1, { ...own(40), logError: 0 })).toThrow('own.logError');
    expect(() => ratioErrorOf(0.1, { ...own(40), logErrorUpper: 0.01 })).toThrow('own.logErrorUpper');
  });
});
