import { expect, test } from 'vitest';
import { riseBetweenRests } from '../../../packages/analysis/src/movement/body-rise.ts';
import '../../support/close.ts';

/** z = 0.03 (1 - cos(pi t)), one cycle of 2 s at 500 Hz: Cavagna's condition holds at both bottoms. */
const acceleration = Float64Array.from({ length: 1001 }, (_, i) => 0.03 * Math.PI ** 2 * Math.cos((Math.PI * i) / 500));

test('a cosine rise of 60 mm comes back from its acceleration', () => {
  const expected = Float64Array.from({ length: 1001 }, (_, i) => 0.03 * (1 - Math.cos((Math.PI * i) / 500)));
  expect(riseBetweenRests(acceleration, 500)).toBeCloseToEach(expected, { rtol: 0, atol: 2e-6 });
});

test('a constant and a linear error of the sensor change nothing', () => {
  const clean = riseBetweenRests(acceleration, 500);
  const biased = acceleration.map((value, i) => value + 0.2 - 0.0003 * i);
  expect(riseBetweenRests(biased, 500)).toBeCloseToEach(clean, { rtol: 0, atol: 1e-11 });
});

test('both ends stay on the bottom, whatever the acceleration', () => {
  const way = riseBetweenRests(
    acceleration.map((value, i) => value * Math.sin(i)),
    500,
  );
  expect(way[0]).toBe(0);
  expect(Math.abs(way[1000])).toBeLessThan(1e-12);
});

test('two samples hold no movement', () => {
  expect(riseBetweenRests(Float64Array.of(3, 4), 100)).toEqual(new Float64Array(2));
});
