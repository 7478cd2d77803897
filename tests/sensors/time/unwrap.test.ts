import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unwrapNear } from '../../../packages/sensors/src/time/unwrap.ts';
import { runs } from '../../support/runs.ts';

test('a counter that began again goes on, forwards and backwards', () => {
  expect(unwrapNear(2, 256, 255)).toBe(258);
  expect(unwrapNear(254, 256, 257)).toBe(254);
  expect(unwrapNear(7, 256, 5 * 256 + 9)).toBe(5 * 256 + 7);
  expect(unwrapNear(255, 256, 0)).toBe(-1);
});

test('whatever the modulus, a number less than half of it away is found again', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 2 ** 32 }),
      fc.integer({ min: 0, max: 2 ** 45 }),
      fc.double({ min: -0.49, max: 0.49, noNaN: true }),
      (modulus, number, share) => {
        const near = number + Math.trunc(share * modulus);
        expect(unwrapNear(number % modulus, modulus, near)).toBe(number);
      },
    ),
    runs(300, 10_000),
  );
});
