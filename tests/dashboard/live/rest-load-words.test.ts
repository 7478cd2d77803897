import { REST_LOAD_REFUSALS } from '@surae/shared';
import { expect, test } from 'vitest';
import { restLoadWords, withCalibration } from '../../../apps/dashboard/src/live/rest-load-words.ts';

test('a weight is said with its uncertainty, and a refusal with its numbers', () => {
  expect(restLoadWords({ kind: 'rest-load', loadN: 61.6, uN: 0.24, spanS: 2 }, false)).toBe(
    'The resting leg presses 62 N, to 0.2 N (standard uncertainty of the reading; the error of the plate is not known and not in it).',
  );
  expect(restLoadWords({ kind: 'refused', reason: 'moving', found: 31.27, allowed: 10 }, false)).toBe(
    'The reading wanders by 31.3 N, more than 10.0. Let the leg rest, then read it again.',
  );
  for (const reason of Object.keys(REST_LOAD_REFUSALS) as (keyof typeof REST_LOAD_REFUSALS)[]) {
    expect(restLoadWords({ kind: 'refused', reason, found: 1, allowed: 2 }, true)).not.toMatch(/[{}]/);
  }
  expect(restLoadWords({ kind: 'refused', reason: 'no-zero', found: null, allowed: null }, false)).toMatch(
    /no zero yet/,
  );
});

test('a calibration puts its uncertainty in, and without one the sentence says that it is not', () => {
  const load = { kind: 'rest-load', loadN: 60, uN: 0.3, spanS: 2 } as const;
  const counted = withCalibration(load, 0.01);
  expect(counted.uN).toBeCloseTo(Math.hypot(0.3, 0.6), 12);
  expect(restLoadWords(counted, true)).toBe(
    'The resting leg presses 60 N, to 0.7 N (standard uncertainty, calibration included).',
  );
  expect(withCalibration(load, null)).toBe(load);
});
