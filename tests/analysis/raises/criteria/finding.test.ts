import { expect, test } from 'vitest';
import {
  limitFinding,
  notObserved,
  probabilityAbove,
} from '../../../../packages/analysis/src/raises/criteria/finding.ts';

const at = (value: number, u: number) => ({ value, u, threshold: 0.75, unit: '1', fromS: 1, toS: 2 });

test('the probability of lying above is one half on the threshold and 97.7 % two uncertainties above', () => {
  expect(probabilityAbove(0.75, 0.75, 0.02)).toBe(0.5);
  expect(Math.abs(probabilityAbove(0.79, 0.75, 0.02) - 0.97725)).toBeLessThan(1e-5);
  expect(probabilityAbove(0.71, 0.75, 0.02)).toBeCloseTo(1 - probabilityAbove(0.79, 0.75, 0.02), 12);
});

test('without uncertainty the threshold itself is reached', () => {
  expect(probabilityAbove(0.75, 0.75, 0)).toBe(1);
  expect(probabilityAbove(0.7499, 0.75, 0)).toBe(0);
});

test('far out the probability stays a number between 0 and 1', () => {
  expect(probabilityAbove(1e6, 0, 1e-6)).toBe(1);
  expect(probabilityAbove(-1e6, 0, 1e-6)).toBeGreaterThanOrEqual(0);
  expect(probabilityAbove(-1e6, 0, 1e-6)).toBeLessThan(1e-200);
});

test('a value at the threshold passes either way, even when arithmetic misses it by the last bit', () => {
  expect(limitFinding(at(0.1 * 3 + 0.45, 0), 'at-least', 'measured').result).toBe('pass');
  expect(limitFinding(at(0.75, 0), 'at-most', 'measured').result).toBe('pass');
  expect(limitFinding(at(0.7499, 0), 'at-least', 'measured').result).toBe('fail');
  expect(limitFinding(at(0.7501, 0), 'at-most', 'measured').result).toBe('fail');
});

test('within one uncertainty of the threshold a finding is borderline', () => {
  expect(limitFinding(at(0.76, 0.02), 'at-least', 'measured').borderline).toBe(true);
  expect(limitFinding(at(0.78, 0.02), 'at-least', 'measured').borderline).toBe(false);
  expect(limitFinding(at(0.75, 0), 'at-least', 'measured').borderline).toBe(false);
});

test('the probabilities of at least and at most add up to one', () => {
  const least = limitFinding(at(0.76, 0.02), 'at-least', 'measured').probability ?? Number.NaN;
  const most = limitFinding(at(0.76, 0.02), 'at-most', 'measured').probability ?? Number.NaN;
  expect(least + most).toBeCloseTo(1, 12);
  expect(least).toBeGreaterThan(0.5);
});

test('what is not observed is no pass and has no probability', () => {
  expect(notObserved('placement')).toEqual({
    result: 'not_observed',
    seen: 'not-observed',
    borderline: false,
    probability: null,
    evidence: null,
    reason: 'placement',
  });
});
