import { hopDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { weightFromHops } from '../../../packages/analysis/src/hops/hop-weight.ts';
import { platformFlights } from '../../../packages/analysis/src/hops/platform-flights.ts';
import { madeForce } from '../../support/made-hops.ts';

function weightOf(count: number, zeroN = 0) {
  const { timesS, force } = madeForce({ count, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 1000, zeroN });
  const signal = { timesS, force, intervalS: 0.001, jitterS: 0 };
  const found = platformFlights(signal, hopDefaults)!;
  return weightFromHops(signal, found.flights, found.zeroN, 0.6);
}

test('the mean force of whole hops is the weight, whatever the zero: 70 x 9.80665 = 686.5 N', () => {
  for (const zeroN of [0, 45]) expect(Math.abs(weightOf(12, zeroN)!.value - 686.47)).toBeLessThan(0.7);
});

test('two hops are too few', () => {
  expect(weightOf(3)).toBeUndefined();
});
