import { findEfforts } from '@surae/analysis';
import { type Level, simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { earlyRise } from '../../../packages/analysis/src/efforts/early-rise.ts';
import { riseRates } from '../../../packages/analysis/src/efforts/rise-rates.ts';
import { fastSettings } from '../../support/effort-settings.ts';
import {
  exponentialCurve as curve,
  exponentialSamples as net,
  newtonOfNoise as noise,
  exponentialOnset as onset,
  restOfNothing as rest,
} from '../../support/exponential-rise.ts';
import { exponentialEffort, type MadePull, madeTrace, rampEffort } from '../../support/made-pull.ts';
import { inRun } from '../../support/runs.ts';

const rule = fastSettings.measure;
const { timesS } = net;
const peak = { value: 1000, u: 1 };

// F = 1000 (1 - exp(-t / 0.1)): area 1000 (0.2 - 0.1 (1 - exp(-2))), 30 % after 0.1 ln(1 / 0.7), 50 % after 0.1 ln 2
const areaNs = 1000 * (0.2 - 0.1 * (1 - Math.exp(-2)));
const reachedS = [0.1 * Math.log(1 / 0.7), 0.1 * Math.log(2)];

function early(samples = net.samples, sampleRateHz = 1000, from: Parameters<typeof riseRates>[1] = onset) {
  const part = { timesS, samples };
  const rates = riseRates(part, from, rest, noise, sampleRateHz, null, rule);
  return earlyRise(part, from, rest, noise, peak, rates, rule);
}

const times = (one: ReturnType<typeof early>): number[] => one.reached.map(({ afterS }) => afterS!.value);
const firstOf = (made: MadePull) => findEfforts(madeTrace(made), { polarity: 'find' }, fastSettings).efforts[0];

describe('an exponential rise, in closed form', () => {
  test('impulse of the first 200 ms and times to 30 and 50 % of the peak', () => {
    const { impulse, reason, windowS } = early();
    expect([reason, windowS]).toEqual([null, 0.2]);
    expect([impulse!.value]).toBeCloseToEach([areaNs], { rtol: 1e-3, atol: 0 });
    // at 1000 Hz a sample lies up to half a millisecond beside the crossing
    expect(times(early())).toBeCloseToEach(reachedS, { rtol: 0, atol: 2e-4 });
  });

  test('the uncertainty holds at least what the onset makes of it', () => {
    const { impulse, reached } = early();
    // force after 200 ms, times 1 ms
    expect(impulse!.u).toBeGreaterThan(864.66 * 0.001);
    for (const { afterS } of reached) expect(afterS!.u).toBeGreaterThan(0.001);
  });

  test('they are read from the samples and not from the curve alone', () => {
    const raised = early(net.samples.map((value) => 1.02 * value));
    expect(raised.impulse!.value / areaNs).toBeCloseTo(1.02, 3);
    // 30 % of the same peak is reached where the curve is at 0.3 / 1.02
    expect(times(raised)[0]).toBeCloseTo(-0.1 * Math.log(1 - 0.3 / 1.02), 3);
  });

  test('a knock of 8 ms in the rise moves them by less than a hundredth', () => {
    const knocked = early(net.samples.map((value, i) => value + (i >= 1050 && i < 1058 ? 150 : 0)));
    expect(Math.abs(knocked.impulse!.value / areaNs - 1)).toBeLessThan(0.01);
    expect(Math.abs(times(knocked)[1] - reachedS[1])).toBeLessThan(0.001);
  });

  test.each([500, 1000, 2000])('found in a recording at %i Hz, with noise on a leg at rest', (sampleRateHz) => {
    const made = { efforts: [exponentialEffort(3.0004, 1000, 0.1, 1.5)], lengthS: 8, sampleRateHz, noise: 1 };
    const { impulse, reached } = firstOf({ ...made, rest: () => 85 }).early;
    expect(Math.abs(impulse!.value - areaNs)).toBeLessThan(2 * impulse!.u);
    expect(impulse!.u / areaNs).toBeLessThan(0.02);
    reached.forEach(({ share, afterS }, k) => {
      expect(share).toBe([0.3, 0.5][k]);
      expect(Math.abs(afterS!.value - reachedS[k])).toBeLessThan(2 * afterS!.u);
      expect(afterS!.u).toBeLessThan(0.002);
    });
  });
});

describe('nothing without a reason', () => {
  const none = (reason: string) => ({
    impulse: null,
    reached: [
      { share: 0.3, afterS: null },
      { share: 0.5, afterS: null },
    ],
    reason,
  });
  const fast = exponentialEffort(3, 1000, 0.1, 1.5);

  test('a ramp, too low a rate, a dip: the reason of the rate over 200 ms', () => {
    const dip = { onsetS: 2.8, force: (t: number) => (t > 0 && t < 0.2 ? -20 * Math.sin((Math.PI * t) / 0.2) : 0) };
    const made = { lengthS: 12, sampleRateHz: 1000, noise: 0.5 };
    for (const [reason, changed] of [
      ['ramped', { efforts: [rampEffort(3, 800, 2, 3)] }],
      ['rate-too-low', { efforts: [fast], sampleRateHz: 80 }],
      ['countermovement', { efforts: [fast, dip] }],
    ] as const) {
      const effort = firstOf({ ...made, ...changed });
      expect(effort.early).toMatchObject(none(reason));
      expect(effort.rates[3].reason).toBe(reason);
    }
  });

  test('no curve of the rise, or one that stays below a share of the peak', () => {
    expect(early(net.samples, 1000, { ...onset, method: 'line', curve: null })).toMatchObject(none('onset-uncertain'));
    const low = { ...onset, curve: { ...curve, height: 400 } };
    expect(early(net.samples, 1000, low)).toMatchObject(none('onset-uncertain'));
  });

  test('without rates there is nothing to go by', () => {
    expect(earlyRise(net, onset, rest, noise, peak, [], rule)).toMatchObject(none('rate-too-low'));
  });
});

test('simulated efforts: at least nine of ten intervals of 95 % hold the truth, and the middle one is right', () => {
  for (const level of ['typical', 'field'] satisfies Level[]) {
    const departures: [impulse: number, toThird: number, toHalf: number][] = [];
    const apart: number[] = [];
    for (let seed = 2001; seed <= 2000 + inRun(8, 10); seed++) {
      const { trace, truth } = simulatePulls({ kind: 'fast', level, seed, sampleRateHz: 1000 });
      const { efforts } = findEfforts(trace, { polarity: 'find' }, fastSettings);
      for (const one of truth.efforts) {
        const { impulse, reached, reason } = efforts.find(({ peakS }) => Math.abs(peakS - one.peakS) < 0.5)!.early;
        if (reason !== null) continue;
        const z = reached.map(({ afterS }, k) => (afterS!.value - one.reachedS[k]) / afterS!.u);
        departures.push([(impulse!.value - one.earlyImpulseNs) / impulse!.u, z[0], z[1]]);
        apart.push(impulse!.value / one.earlyImpulseNs - 1);
      }
    }
    expect(departures.length).toBeGreaterThan(inRun(15, 25));
    for (const k of [0, 1, 2] as const) {
      const held = departures.filter((one) => Math.abs(one[k]) < 1.96).length / departures.length;
      expect(held, `${level}, ${k}`).toBeGreaterThan(0.9);
      // intervals that are far too wide hold everything and say nothing
      const size = Math.sqrt(departures.reduce((sum, one) => sum + one[k] ** 2, 0) / departures.length);
      expect(size, `${level}, ${k}`).toBeGreaterThan(0.5);
    }
    expect(Math.abs(apart.sort((a, b) => a - b)[apart.length >> 1])).toBeLessThan(0.02);
  }
});
