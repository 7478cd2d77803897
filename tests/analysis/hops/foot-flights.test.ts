import { hopDefaults, type Trace } from '@surae/analysis';
import { simulateHops } from '@surae/simulation';
import { expect, test } from 'vitest';
import { footFlights } from '../../../packages/analysis/src/hops/foot-flights.ts';
import { footSignal } from '../../../packages/analysis/src/hops/hop-signal.ts';

const made = simulateHops({ placement: 'foot', level: 'typical', seed: 3, sampleRateHz: 400 });
const flightsOf = (trace: Trace) => footFlights(footSignal(trace), hopDefaults);

/** The sensor mounted another way: x, y, z become y, z, x, and two of them look the other way. */
function turned(trace: Trace): Trace {
  const [{ timesS, channels }] = trace.groups;
  const next = { x: 'y', y: 'z', z: 'x' } as const;
  return {
    groups: [
      {
        timesS,
        channels: channels.map(({ quantity, axis, samples }) => ({
          quantity,
          axis: next[axis as 'x'],
          samples: axis === 'z' ? samples : samples.map((value) => -value),
        })),
      },
    ],
  };
}

test('flights with both ends, each near its truth', () => {
  const { flights, edgesWithheld } = flightsOf(made.trace);
  expect(edgesWithheld).toBeNull();
  expect(flights).toHaveLength(made.truth.hops.length);
  made.truth.hops.forEach((hop, k) => {
    expect(Math.abs(flights[k].takeOff!.atS - hop.takeOffS)).toBeLessThan(0.012);
    expect(Math.abs(flights[k].landing!.atS - hop.landsAgainS)).toBeLessThan(0.006);
  });
});

test('however the sensor is mounted, the flights are the same', () => {
  const plain = flightsOf(made.trace).flights;
  const other = flightsOf(turned(made.trace)).flights;
  other.forEach((flight, k) => {
    expect(flight.takeOff!.atS).toBeCloseTo(plain[k].takeOff!.atS, 6);
    expect(flight.landing!.atS).toBeCloseTo(plain[k].landing!.atS, 6);
  });
});

test('an accelerometer alone shows that there were hops, and no ends', () => {
  const alone = simulateHops({ placement: 'foot', level: 'typical', seed: 3, sampleRateHz: 400, gyroscope: false });
  const { flights, edgesWithheld } = flightsOf(alone.trace);
  expect(edgesWithheld).toBe('no-gyroscope');
  expect(flights).toHaveLength(alone.truth.hops.length);
  expect(flights.every(({ takeOff, landing }) => takeOff === null && landing === null)).toBe(true);
});
