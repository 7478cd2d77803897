import fc from 'fast-check';
import { expect, test } from 'vitest';
import { valueStep } from '../../../apps/dashboard/src/devices/value-step.ts';

test('values in tenths have a step of a tenth, wherever they begin', () => {
  expect(Math.abs(valueStep([9.8, 9.9, 10.1, 10.6, 9.8])! - 0.1)).toBeLessThan(1e-12);
  expect(valueStep([0.25, 2.25, 4.25, 10.25])).toBe(2);
});

test('values that fit no step, or are too few, have none', () => {
  expect(valueStep([0, 1, 2.5, 3.1, 4])).toBeNull();
  expect(valueStep([0, 1, 2])).toBeNull();
  expect(valueStep([5, 5, 5, 5, 5])).toBeNull();
  expect(valueStep([])).toBeNull();
});

test('the step of a grid is found from any values of which two are neighbours', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 10, noNaN: true }),
      fc.double({ min: -20, max: 20, noNaN: true }),
      fc.uniqueArray(fc.integer({ min: -500, max: 500 }), { minLength: 5, maxLength: 60 }),
      (step, shift, places) => {
        const found = valueStep([...places, places[0] + 1].map((place) => shift + place * step));
        expect(Math.abs(found! / step - 1)).toBeLessThan(1e-3);
      },
    ),
    { seed: 5 },
  );
});
