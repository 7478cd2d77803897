import { expect, test } from 'vitest';
import { asList, fitsQuery } from '../../packages/storage/src/row-query.ts';

const row = { id: '1', kind: 'visit', about: 'p1', whose: 'p1' };

test('a row fits where everything fits that is told', () => {
  expect(fitsQuery({})(row)).toBe(true);
  expect(fitsQuery({ kind: ['person', 'visit'], about: 'p1', whose: 'p1' })(row)).toBe(true);
  expect(fitsQuery({ kind: 'person' })(row)).toBe(false);
  expect(fitsQuery({ about: ['p2'] })(row)).toBe(false);
  expect(fitsQuery({ kind: 'visit', whose: 'p2' })(row)).toBe(false);
  expect(fitsQuery({ about: 'p1' })({ ...row, about: null })).toBe(false);
});

test('one is a list of one, and nothing stays nothing', () => {
  expect([asList('a'), asList(['a', 'b']), asList(undefined)]).toEqual([['a'], ['a', 'b'], undefined]);
});
