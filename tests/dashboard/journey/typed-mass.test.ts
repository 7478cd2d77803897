import { expect, test } from 'vitest';
import { looksLikePounds, poundsInKilograms } from '../../../apps/dashboard/src/journey/typed-mass.ts';

test('165 lb are 74.8 kg, to the tenth', () => {
  // 165 x 0.45359237 = 74.84
  expect(poundsInKilograms(165)).toBe(74.8);
});

test('a mass looks like pounds where that is nearer to the one before, or it is large', () => {
  expect([looksLikePounds(165, 75), looksLikePounds(165, 160)]).toEqual([true, false]);
  expect([looksLikePounds(139.9, null), looksLikePounds(140, null)]).toEqual([false, true]);
});
