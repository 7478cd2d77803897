import { hopDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { platformFlights } from '../../../packages/analysis/src/hops/platform-flights.ts';
import { type MadeHops, madeForce } from '../../support/made-hops.ts';

const usual: MadeHops = { count: 12, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 1000 };
const flightsOf = (hops: MadeHops, change: (force: Float64Array) => Float64Array = (force) => force) => {
  const { timesS, force } = madeForce(hops);
  return platformFlights({ timesS, force: change(force), intervalS: 1 / hops.sampleRateHz, jitterS: 0 }, hopDefaults);
};

test('every flight is found, its ends to a fraction of a sample', () => {
  const { flights } = flightsOf(usual)!;
  expect(flights).toHaveLength(12);
  flights.slice(1, -1).forEach((flight, k) => {
    const fromS = 1 + 0.45 * (k + 1);
    expect(Math.abs(flight.takeOff!.atS - fromS)).toBeLessThan(0.0005);
    expect(Math.abs(flight.landing!.atS - fromS - 0.2)).toBeLessThan(0.0005);
    expect(flight.takeOff!.ownUS).toBeGreaterThan(0);
  });
});

test('a platform that was not zeroed gives the same flights', () => {
  const plain = flightsOf(usual)!;
  const shifted = flightsOf({ ...usual, zeroN: 60 })!;
  expect(shifted.zeroN).toBeCloseTo(60, 9);
  shifted.flights.forEach((flight, k) => {
    expect(flight.landing!.atS).toBeCloseTo(plain.flights[k].landing!.atS, 6);
  });
});

test('ringing over the threshold for a moment ends no flight', () => {
  const rung = flightsOf(usual, (force) =>
    force.map((value, i) => (value === 0 && i % 450 > 8 && i % 450 < 20 ? 40 : value)),
  )!;
  expect(rung.flights).toHaveLength(12);
});

test('a force that never comes down to nothing holds no flight', () => {
  const steady = Float64Array.from({ length: 5000 }, () => 700);
  const timesS = Float64Array.from({ length: 5000 }, (_, i) => i / 1000);
  expect(platformFlights({ timesS, force: steady, intervalS: 0.001, jitterS: 0 }, hopDefaults)).toBeUndefined();
});

test('an edge in a gap is not given', () => {
  const { timesS, force } = madeForce(usual);
  // 50 ms are lost about the third take-off, at 1.9 s
  const kept = [...timesS.keys()].filter((i) => Math.abs(timesS[i] - 1.9) > 0.025);
  const found = platformFlights(
    {
      timesS: timesS.filter((_, i) => kept.includes(i)),
      force: force.filter((_, i) => kept.includes(i)),
      intervalS: 0.001,
      jitterS: 0,
    },
    hopDefaults,
  )!;
  expect(found.flights).toHaveLength(12);
  expect(found.flights[2].takeOff).toBeNull();
  expect(found.flights[2].landing).not.toBeNull();
});
