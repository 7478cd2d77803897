import { REST_LOAD_REFUSALS } from '@surae/shared';
import { expect, test } from 'vitest';
import { restLoadWords } from '../../../apps/dashboard/src/live/rest-load-words.ts';

test('a weight is said with its uncertainty, and a refusal with its numbers', () => {
  expect(restLoadWords({ kind: 'rest-load', loadN: 61.6, uN: 0.24, spanS: 2 })).toBe(
    'The resting leg presses 62 N, to 0.2 N (standard uncertainty).',
  );
  expect(restLoadWords({ kind: 'refused', reason: 'moving', found: 31.27, allowed: 10 })).toBe(
    'The reading wanders by 31.3 N, more than 10.0. Let the leg rest, then read it again.',
  );
  for (const reason of Object.keys(REST_LOAD_REFUSALS) as (keyof typeof REST_LOAD_REFUSALS)[]) {
    expect(restLoadWords({ kind: 'refused', reason, found: 1, allowed: 2 })).not.toMatch(/[{}]/);
  }
  expect(restLoadWords({ kind: 'refused', reason: 'no-zero', found: null, allowed: null })).toMatch(/no zero yet/);
});
