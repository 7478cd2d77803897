import { describe, expect, test } from 'vitest';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import { HostLine } from '../../../packages/sensors/src/time/host-line.ts';

interface Radio {
  readonly driftPpm: number;
  readonly meanDelayMs: number;
  readonly lengthS: number;
  readonly packetS: number;
  /** from when on the page stands still, and until when [s] */
  readonly stalls: readonly (readonly [number, number])[];
}

/** Arrivals of packets: device times run fast by the drift, delays are exponential above 3 ms, a page that stands still gets all late. */
function arrivals({ driftPpm, meanDelayMs, lengthS, packetS, stalls }: Radio, seed: number): HostLine {
  const random = createRandom(seed);
  const line = new HostLine();
  let lastMs = 0;
  // no whole number of steps of the host clock between two packets
  for (let hostS = random(); hostS < lengthS; hostS += packetS * 1.000_618) {
    const deviceS = hostS * (1 + driftPpm * 1e-6);
    const arrivedMs = 5000 + 1000 * hostS + 3 - meanDelayMs * Math.log(1 - random());
    const stall = stalls.find(([from, to]) => arrivedMs >= 5000 + 1000 * from && arrivedMs < 5000 + 1000 * to);
    lastMs = Math.max(lastMs, stall === undefined ? arrivedMs : 5000 + 1000 * stall[1]);
    // the clock of a page moves in steps of a tenth of a millisecond
    line.add(deviceS, Math.floor(10 * lastMs) / 10);
  }
  return line;
}

test('by hand: a device that counts 2 % fast, one arrival in three on time', () => {
  const line = new HostLine();
  for (let i = 0; i < 300; i++) line.add(0.102 * i, 700 + 100 * i + [0, 40, 90][i % 3]);
  const fitted = line.fitted!;
  expect(fitted.offsetMs).toBeCloseTo(700, 6);
  expect(fitted.driftPpm).toBeCloseTo(20_000, 3);
  expect(fitted.spanS).toBeCloseTo(0.102 * 299, 9);
  // many lie on the line: only the step of the host clock is left, 0.1 ms at both ends of 30.5 s
  expect(fitted.driftUncertaintyPpm).toBeCloseTo((0.1e-3 / Math.sqrt(6) / (0.102 * 299)) * 1e6 * 1.02 ** 2, 6);
  expect(fitted.offsetUncertaintyMs).toBeCloseTo(0.1, 9);
});

test('says nothing before it can say how sure it is, and leaves out what comes from the past', () => {
  const line = new HostLine();
  expect(line.fitted).toBeNull();
  for (let i = 0; i < 23; i++) line.add(0.3 * i, 300 * i);
  expect(line.fitted).toBeNull();
  line.add(0.3 * 23, 300 * 23);
  const fitted = line.fitted!;
  expect(fitted.driftPpm).toBeCloseTo(0, 6);
  line.add(1, -5000);
  expect(line.fitted).toEqual(fitted);
});

describe('simulated radios', () => {
  test.each([-200, -20, 0, 20, 200])(
    'a drift of %d ppm is found in a minute, bursts and stalls of a second or not',
    (driftPpm) => {
      for (const stalls of [
        [],
        [
          [10, 11],
          [30, 31.5],
          [59, 60],
        ],
      ] as const) {
        const { fitted } = arrivals({ driftPpm, meanDelayMs: 8, lengthS: 60, packetS: 0.02, stalls }, 7);
        expect(Math.abs(fitted!.driftPpm - driftPpm)).toBeLessThan(12);
        expect(fitted!.driftUncertaintyPpm).toBeLessThan(12);
        expect(Math.abs(fitted!.offsetMs - 5003)).toBeLessThan(1);
      }
    },
  );

  test('the stated uncertainty is that of the errors, for delays of any size and recordings of any length', () => {
    // in the last case the steps of the host clock decide, and they are taken at their worst
    for (const [meanDelayMs, lengthS, packetS, least] of [
      [8, 30, 0.02, 0.75],
      [25, 120, 0.05, 0.75],
      [2, 600, 0.1, 0.3],
    ] as const) {
      const offsets: number[] = [];
      const errors = Array.from({ length: 200 }, (_, seed) => {
        const fitted = arrivals({ driftPpm: 50, meanDelayMs, lengthS, packetS, stalls: [] }, seed).fitted!;
        // 3 ms is the least delay; the device is 50 ppm ahead in the middle of the recording
        const middleMs = fitted.offsetMs + (500 * lengthS) / (1 + fitted.driftPpm * 1e-6);
        offsets.push((middleMs - 5003 - (500 * lengthS) / (1 + 50e-6)) / fitted.offsetUncertaintyMs);
        return (fitted.driftPpm - 50) / fitted.driftUncertaintyPpm;
      });
      const offsetRms = Math.sqrt(offsets.reduce((sum, error) => sum + error ** 2, 0) / offsets.length);
      expect(offsetRms).toBeGreaterThan(least / 2);
      expect(offsetRms).toBeLessThan(1.3);
      const rms = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
      expect(rms).toBeGreaterThan(least);
      expect(rms).toBeLessThan(1.3);
      expect(errors.filter((error) => Math.abs(error) < 2).length / errors.length).toBeGreaterThan(0.9);
    }
  });

  test('half an hour at a thousand packets a second is followed with little memory, and in constant time', () => {
    const { fitted } = arrivals(
      { driftPpm: -35, meanDelayMs: 5, lengthS: 1800, packetS: 0.005, stalls: [[900, 901]] },
      3,
    );
    expect(Math.abs(fitted!.driftPpm + 35)).toBeLessThan(4 * fitted!.driftUncertaintyPpm);
    expect(fitted!.driftUncertaintyPpm).toBeLessThan(0.2);
  });
});
