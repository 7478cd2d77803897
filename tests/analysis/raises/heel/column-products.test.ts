import { expect, test } from 'vitest';
import { columnProducts, normalEquations } from '../../../../packages/analysis/src/raises/heel/column-products.ts';

test('normal equations from columns are the sums over samples', () => {
  const count = 9;
  const firsts = [4, 3, 0, 5, 6, 0, 9, 9];
  const value = (a: number, i: number): number => (a < 6 && i >= firsts[a] ? Math.sin(1 + 3 * a + i) : 0);
  const weight = (i: number): number => 1 / (1 + i);
  const columns = Float64Array.from({ length: 8 * count }, (_, at) => value(Math.floor(at / count), at % count));
  const weighted = columns.map((one, at) => one * weight(at % count));
  const departures = Float64Array.from({ length: count }, (_, i) => Math.cos(i));
  const products = columnProducts(6);
  expect(products.unknowns).toBe(8);
  products.matrix.fill(7);
  normalEquations(columns, weighted, departures, firsts, products);
  const sum = (term: (i: number) => number): number =>
    Array.from(departures, (_, i) => term(i)).reduce((s, x) => s + x, 0);
  for (let a = 0; a < 6; a++) {
    expect(products.gradient[a]).toBeCloseTo(
      sum((i) => weight(i) * value(a, i) * departures[i]),
      12,
    );
    for (let b = 0; b <= a; b++) {
      expect(products.matrix[8 * a + b]).toBeCloseTo(
        sum((i) => weight(i) * value(a, i) * value(b, i)),
        12,
      );
    }
  }
});
