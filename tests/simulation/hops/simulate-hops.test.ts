import { simulateHops } from '@surae/simulation';
import { expect, test } from 'vitest';

test('the same seed gives the same bytes, another seed another recording', () => {
  for (const placement of ['platform', 'foot'] as const) {
    const made = (seed: number) => simulateHops({ placement, level: 'field', seed });
    expect(made(4)).toEqual(made(4));
    expect(made(4).trace.groups[0].channels[0].samples).not.toEqual(made(5).trace.groups[0].channels[0].samples);
  }
});

test('20 to 25 hops unless told otherwise; the gyroscope can be left out', () => {
  for (let seed = 1; seed <= 8; seed++) {
    const count = simulateHops({ placement: 'platform', level: 'typical', seed }).truth.hops.length;
    expect(count).toBeGreaterThanOrEqual(20);
    expect(count).toBeLessThanOrEqual(25);
  }
  expect(
    simulateHops({ placement: 'foot', level: 'clean', seed: 1, gyroscope: false }).trace.groups[0].channels,
  ).toHaveLength(3);
  expect(simulateHops({ placement: 'platform', level: 'clean', seed: 1, count: 7 }).truth.hops).toHaveLength(7);
});

test('the platform reads its offset in the air and the weight before the first hop', () => {
  const { trace, truth, faults } = simulateHops({ placement: 'platform', level: 'typical', seed: 2, massKg: 80 });
  const [{ timesS, channels }] = trace.groups;
  const meanOver = (fromS: number, toS: number): number => {
    const values = channels[0].samples.filter((_, i) => timesS[i] > fromS && timesS[i] < toS);
    return values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  const hop = truth.hops[6];
  expect(Math.abs(meanOver(hop.takeOffS + 0.05, hop.landsAgainS - 0.02) - faults.offsetN)).toBeLessThan(3);
  expect(Math.abs(meanOver(0, 1) - 80 * 9.80665)).toBeLessThan(20);
});
