import { dateTimeOf, quantity, uuidOf } from '@surae/exchange';
import { expect, test } from 'vitest';

test('a time stands with its offset or not at all', () => {
  expect(dateTimeOf('2026-01-05T10:00:00+01:00')).toBe('2026-01-05T10:00:00+01:00');
  expect(dateTimeOf('2026-01-05T10:00:00.250Z')).toBe('2026-01-05T10:00:00.250Z');
  expect(dateTimeOf('2026-01-05T10:00')).toBe('2026-01-05');
  expect(dateTimeOf('2026-01-05T10:00:00')).toBe('2026-01-05');
  expect(dateTimeOf('2026-01-05')).toBe('2026-01-05');
  expect([dateTimeOf('last week'), dateTimeOf(null)]).toEqual([undefined, undefined]);
});

test('an id is a UUID of version 8, the same for the same thing alone', () => {
  const one = uuidOf('trial', 'a');
  expect(one).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(uuidOf('trial', 'a')).toBe(one);
  expect(new Set([one, uuidOf('visit', 'a'), uuidOf('trial', 'b')]).size).toBe(3);
});

test('a quantity has the UCUM code as unit and code', () => {
  expect(quantity(3, 'N.m')).toEqual({ value: 3, unit: 'N.m', system: 'http://unitsofmeasure.org', code: 'N.m' });
});
