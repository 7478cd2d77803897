import { expect, test } from 'vitest';
import { countWithBounds, plain, withBounds, withUncertainty } from '../../apps/cli/src/readable-number.ts';

test.each([
  // two digits of an uncertainty that begins with 1, one digit of any other; never beyond thousandths
  [98.76, 2.4, '99 ± 2'],
  [98.76, 1.2, '99 ± 1'],
  [98.764, 0.12, '98.76 ± 0.12'],
  [98.764, 0.3, '98.8 ± 0.3'],
  [98.764, 0.196, '98.8 ± 0.2'],
  [98.7654321, 0.00012, '98.765 ± 0.000'],
  [-3.2, 0.5, '−3.2 ± 0.5'],
] as const)('%d with the uncertainty %d reads "%s"', (value, u, text) => {
  expect(withUncertainty(value, u)).toBe(text);
});

test('without an uncertainty one digit stands alone', () => {
  expect([withUncertainty(98.76, 0), withUncertainty(98.76, Number.NaN)]).toEqual(['98.8', '98.8']);
});

test('minus is a true minus, and what rounds to nothing has none', () => {
  expect([plain(-1.25, 1), plain(-0.04, 1), plain(2, 2)]).toEqual(['−1.3', '0.0', '2.00']);
});

test('bounds stand in brackets only when both are there', () => {
  expect(withBounds(1, -0.5, 2.5, 1)).toBe('1.0 (−0.5 to 2.5)');
  expect([withBounds(1, null, 2, 0), withBounds(1, 0, null, 0)]).toEqual(['1', '1']);
});

test('a count shows its bounds unless they leave no room', () => {
  expect([countWithBounds(22, 20, 23), countWithBounds(22, 22, 23), countWithBounds(22, 21, 22)]).toEqual([
    '22 (20-23)',
    '22 (22-23)',
    '22 (21-22)',
  ]);
  expect(countWithBounds(22, 22, 22)).toBe('22');
});
