import { InputError } from '@surae/analysis';
import { expect, test } from 'vitest';
import {
  requireCount,
  requireFinite,
  requireIncreasing,
  requireRange,
  requireSameLength,
} from '../../packages/analysis/src/check.ts';

function refusal(check: () => void): InputError {
  try {
    check();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

test('what is in order passes', () => {
  requireCount([1, 2], 2, 'x');
  requireFinite([1, -2, 0], 'x');
  requireFinite([], 'x');
  requireSameLength([1], [2], 'y');
  requireRange(5, true, 'x', '> 0');
  requireIncreasing([0, 0.1, 7], 'timesS');
  requireIncreasing([], 'timesS');
});

test('a refusal says which argument, what was expected and what came', () => {
  expect(refusal(() => requireCount([1], 2, 'force'))).toMatchObject({
    code: 'too-short',
    message: 'force: expected n >= 2, got n = 1',
  });
  expect(refusal(() => requireFinite([1, 2, Infinity], 'force'))).toMatchObject({
    code: 'not-finite',
    message: 'force: expected finite samples, got Infinity at index 2',
  });
  expect(refusal(() => requireSameLength([1, 2], [1], 'angle'))).toMatchObject({
    code: 'length-mismatch',
    message: 'angle: expected length 2, got length 1',
  });
  expect(refusal(() => requireRange(-1, false, 'cutoffHz', '> 0'))).toMatchObject({
    code: 'out-of-range',
    message: 'cutoffHz: expected > 0, got -1',
  });
  expect(refusal(() => requireIncreasing([0, 1, 1], 'timesS'))).toMatchObject({
    code: 'not-increasing',
    message: 'timesS: expected each time later than the one before, got 1 after 1 at index 2',
  });
});

test('a number that is not finite is refused even where its condition holds', () => {
  expect(refusal(() => requireRange(Infinity, true, 'rate', '> 0')).code).toBe('out-of-range');
  expect(refusal(() => requireIncreasing([0, Number.NaN], 'timesS')).code).toBe('not-finite');
});
