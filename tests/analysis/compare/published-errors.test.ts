import { publishedErrors, type ReliabilityQuestion } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

const asked = (changes: Partial<ReliabilityQuestion>): ReliabilityQuestion => ({
  measure: 'repetitions',
  protocolId: 'single-leg.incline10',
  unit: '1',
  before: 20,
  own: null,
  ...changes,
});

test('three studies give an error of a count, whatever the protocol; the cautious default is none of them', () => {
  const found = publishedErrors(asked({ protocolId: 'single-leg.bent-knee' }));
  expect(found.map(({ standardError }) => standardError)).toEqual([2.25, 2.07, 6.7]);
  expect(
    found.every(({ source, scale, unit }) => source.kind === 'published' && scale === 'natural' && unit === '1'),
  ).toBe(true);
  expect(found[2].source).toMatchObject({ id: 'reliability.repetitions.string', people: 38 });
});

test('a change in percent becomes an error in the unit asked for, by the greater change of a range', () => {
  const [newtons, share] = publishedErrors(asked({ measure: 'peak-force', unit: 'N', before: 1000 }));
  expect(newtons.standardError).toBe(42.6);
  // 14.5 % of 1000 N is 145 N; over 1.96 sqrt 2 it is 52.3 N
  expect([share.standardError]).toBeCloseToEach([52.31], { rtol: 0, atol: 0.01 });
});

test('errors in another unit, and shares of nothing, are left out', () => {
  expect(publishedErrors(asked({ unit: 'N' }))).toEqual([]);
  expect(
    publishedErrors(asked({ measure: 'peak-force', unit: 'N', before: 0 })).map(({ source }) => source.id),
  ).toEqual(['reliability.peak-force.seated']);
});
