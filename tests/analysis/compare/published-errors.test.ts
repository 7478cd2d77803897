import { publishedErrors } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';

test('three studies give an error of a count; the cautious default is none of them', () => {
  const found = publishedErrors({ measure: 'repetitions', unit: '1' });
  expect(found.map(({ standardError }) => standardError)).toEqual([2.25, 2.07, 6.7]);
  expect(
    found.every(({ source, scale, unit }) => source.kind === 'published' && scale === 'natural' && unit === '1'),
  ).toBe(true);
  expect(found[2].source).toMatchObject({ id: 'reliability.repetitions.string', people: 38 });
});

test('a change in percent becomes an error of the logarithm, by the greater change of a range', () => {
  const [newtons, share] = publishedErrors({ measure: 'peak-force', unit: 'N' });
  expect(newtons).toMatchObject({ standardError: 42.6, scale: 'natural' });
  // 14.5 % over 1.96 sqrt 2 is 5.23 %
  expect(share.scale).toBe('log');
  expect([share.standardError]).toBeCloseToEach([0.05231], { rtol: 0, atol: 0.00001 });
});

test('an error in another unit is left out, a share holds in any', () => {
  expect(publishedErrors({ measure: 'repetitions', unit: 'N' })).toEqual([]);
  expect(publishedErrors({ measure: 'peak-force', unit: 'N.m' }).map(({ source }) => source.id)).toEqual([
    'reliability.peak-force.seated-percent',
  ]);
});
