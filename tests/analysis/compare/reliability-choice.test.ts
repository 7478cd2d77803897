import { chooseReliability, InputError, type OwnReliability, type ReliabilityQuestion } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

const own = (pairs: number, changes: Partial<OwnReliability> = {}): OwnReliability => ({
  standardError: 2,
  standardErrorUpper80: 2.5,
  scale: 'natural',
  unit: '1',
  pairs,
  source: { id: 'own.2026', citation: 'own repeated tests', group: 'people in pain' },
  ...changes,
});
const board: ReliabilityQuestion = {
  measure: 'repetitions',
  protocolId: 'single-leg.incline10',
  unit: '1',
  before: 19,
  own: null,
};

test('own pairs come first: the cautious bound from 15 to 29, the estimate from 30 on, nothing below 15', () => {
  const errorOf = (pairs: number) => {
    const found = chooseReliability({ ...board, own: own(pairs) });
    return [found?.standardError, found?.source.kind, found?.source.people];
  };
  expect(errorOf(30)).toEqual([2, 'own-clinic', 30]);
  expect(errorOf(29)).toEqual([2.5, 'own-clinic', 29]);
  expect(errorOf(15)).toEqual([2.5, 'own-clinic', 15]);
  expect(errorOf(14)).toEqual([2.25, 'published', 32]);
});

test('an own error on the log scale stays on it', () => {
  expect(chooseReliability({ ...board, own: own(40, { scale: 'log', standardError: 0.1 }) })).toMatchObject({
    scale: 'log',
    standardError: 0.1,
  });
});

test('an own error in another unit is none', () => {
  expect(chooseReliability({ ...board, own: own(40, { unit: '%' }) })?.source.kind).toBe('published');
});

test('the published error of the same protocol names its source', () => {
  expect(chooseReliability(board)).toMatchObject({
    standardError: 2.25,
    source: { kind: 'published', id: 'reliability.repetitions.incline10', people: 32 },
  });
  expect(chooseReliability(board)?.source.citation).toMatch(/2017 Physiotherapy 103:446/);
});

// cautious defaults: 6 repetitions or 30 %, work 35 %, height 2.2 cm, force 15 %; common practice
test.each([
  ['repetitions', '1', 10, 6],
  ['repetitions', '1', 30, 9],
  ['work', 'J', 1000, 350],
  ['max-height', 'm', 0.1, 0.022],
  ['peak-force', 'N', 1000, 150],
] as const)(
  'where nothing matches: %s in %s from %d on has a detectable change of %d',
  (measure, unit, before, change) => {
    const found = chooseReliability({ measure, unit, before, protocolId: 'single-leg.step', own: null });
    expect(found?.source).toMatchObject({ kind: 'cautious-default', people: null });
    expect([1.96 * Math.SQRT2 * found!.standardError]).toBeCloseToEach([change], { rtol: 1e-12, atol: 0 });
  },
);

test('no error is made up: another unit, or a share of zero, has none', () => {
  expect(chooseReliability({ ...board, measure: 'max-height', unit: 'mm' })).toBeNull();
  expect(chooseReliability({ ...board, measure: 'work', unit: 'J', before: 0 })).toBeNull();
});

test('a value or an own error that makes no sense is refused', () => {
  expect(() => chooseReliability({ ...board, before: -1 })).toThrow(InputError);
  expect(() => chooseReliability({ ...board, own: own(40, { standardError: 0 }) })).toThrow(InputError);
});
