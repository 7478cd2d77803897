import { tableOf } from '@surae/exchange';
import { expect, test } from 'vitest';

const columns = [{ key: 'n', unit: '1', kind: 'number', description: 'a number', source: 'definition' }] as const;
const shape = { name: 't', title: 'T', columns };

test('numbers that are none become not measured', () => {
  expect(tableOf({ ...shape, rows: [[Number.NaN], [-0], [3]] }).rows).toEqual([[null], [-0], [3]]);
});

test('other lengths, kinds and twins are refused with their place', () => {
  expect(() => tableOf({ ...shape, rows: [[1, 2]] })).toThrow('t, row 1: expected 1 cells, got 2');
  expect(() => tableOf({ ...shape, rows: [[1], ['1']] })).toThrow('t, row 2, column "n": expected number, got string');
  expect(() => tableOf({ ...shape, columns: [...columns, ...columns], rows: [] })).toThrow('column "n": expected one');
});
