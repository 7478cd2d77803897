import { expect, test } from 'vitest';
import { noncentralTCdf } from '../../../packages/analysis/src/design/noncentral-t.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

interface Case {
  readonly value: number;
  readonly df: number;
  readonly shift: number;
}

test('the noncentral t is that of SciPy, from 1 degree of freedom to 5000', () => {
  const { input, expected, rtol, atol } = readReference<Case[], number[]>('design.noncentral-t');
  expect(input.length).toBeGreaterThan(100);
  const found = input.map(({ value, df, shift }) => noncentralTCdf(value, df, shift));
  expect(found).toBeCloseToEach(expected, { rtol, atol });
});

test('by hand: at 0 it is the normal probability of minus the shift', () => {
  expect([noncentralTCdf(0, 7, 1.959963984540054)]).toBeCloseToEach([0.025], { rtol: 1e-12, atol: 0 });
});

test('refuses what is no number and less than 1 degree of freedom', () => {
  expect(() => noncentralTCdf(Number.NaN, 5, 0)).toThrow('value');
  expect(() => noncentralTCdf(1, 0.5, 0)).toThrow('df');
  expect(() => noncentralTCdf(1, 5, Number.POSITIVE_INFINITY)).toThrow('shift');
});
