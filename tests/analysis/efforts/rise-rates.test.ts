import { expect, test } from 'vitest';
import '../../support/close.ts';
import { forceOnCurve } from '../../../packages/analysis/src/efforts/rise-curve.ts';
import { riseRates } from '../../../packages/analysis/src/efforts/rise-rates.ts';
import { strengthSettings } from '../../support/effort-settings.ts';
import {
  exponentialCurve as curve,
  exponentialSamples as net,
  newtonOfNoise as noise,
  exponentialOnset as onset,
  restOfNothing as rest,
} from '../../support/exponential-rise.ts';

const rule = strengthSettings.measure;
const { timesS } = net;

// F = 1000 (1 - exp(-t / 0.1)) by hand
test('mean rates of an exponential rise, each with an uncertainty of at least that of the onset, times the factor of the settings', () => {
  const rates = riseRates(net, onset, rest, noise, 1000, null, rule);
  expect(rates.slice(0, 4).map(({ rate }) => rate!.value)).toBeCloseToEach([7869.39, 6321.21, 5179.13, 4323.32], {
    rtol: 1e-4,
    atol: 0,
  });
  // slope after 50 ms: 10000 exp(-0.5) N/s, times 1 ms, over 50 ms
  expect(rates[0].rate!.u).toBeGreaterThan((rule.riseU * 6065 * 0.001) / 0.05);
});

test('the force is read from the samples, not from the curve alone', () => {
  const raised = { timesS, samples: net.samples.map((value) => 1.02 * value) };
  const rates = riseRates(raised, onset, rest, noise, 1000, null, rule);
  expect(Math.abs(rates[3].rate!.value / 4323.32 - 1.02)).toBeLessThan(0.001);
});

test('each window needs its sampling rate: 50 ms 1000 Hz, 100 and 150 ms 500 Hz, 200 ms 200 Hz, 250 ms 80 Hz', () => {
  expect(rule.rateWindowsS).toEqual([0.05, 0.1, 0.15, 0.2, 0.25]);
  const given = (rateHz: number): (string | null)[] =>
    riseRates(net, onset, rest, noise, rateHz, null, rule).map(({ reason }) => reason);
  const low = 'rate-too-low';
  expect(given(1000)).toEqual([null, null, null, null, null]);
  expect(given(900)).toEqual([low, null, null, null, null]);
  expect(given(400)).toEqual([low, low, low, null, null]);
  expect(given(180)).toEqual([low, low, low, low, null]);
  expect(given(60)).toEqual([low, low, low, low, low]);
  // a clock that is a few percent slow is no other sensor
  expect(given(193)).toEqual([low, low, low, null, null]);
});

test('below 200 Hz what is given is coarse', () => {
  for (const [rateHz, coarse] of [
    [80, true],
    [200, false],
  ] as const) {
    expect(riseRates(net, onset, rest, noise, rateHz, null, rule).map((one) => one.coarse)).toEqual(
      Array(5).fill(coarse),
    );
  }
});

test('a ramped effort has no rate, at whatever sampling rate', () => {
  for (const rateHz of [80, 200, 1000, 2000]) {
    for (const { rate, reason } of riseRates(net, onset, rest, noise, rateHz, 'ramped', rule)) {
      expect([rate, reason]).toEqual([null, 'ramped']);
    }
  }
});

test('a rate that is known to less than its limit is not given, and says why', () => {
  const asked = (startU: number, rateUncertaintyMost = 0.05) =>
    riseRates(net, { ...onset, timeS: { value: 1, u: startU } }, rest, noise, 1000, null, {
      ...rule,
      rateUncertaintyMost,
    });
  const reasons = (rates: ReturnType<typeof asked>) => rates.map(({ reason }) => reason);
  // slope after 50 ms over the mean rate: 6065 / 7869 in 50 ms, 1.5 % for each ms of the onset, times the factor
  expect(reasons(asked(0.001))).toEqual(Array(5).fill(null));
  const soft = asked(0.006);
  expect(reasons(soft)).toEqual(['rate-uncertain', null, null, null, null]);
  expect(soft[0].rate).toBeNull();
  expect(reasons(asked(0.006, Number.POSITIVE_INFINITY))).toEqual(Array(5).fill(null));
  expect(reasons(asked(0.0001, 0.0001))).toEqual(Array(5).fill('rate-uncertain'));
  // what makes an effort bad comes first
  expect(
    riseRates(net, { ...onset, timeS: { value: 1, u: 1 } }, rest, noise, 1000, 'countermovement', rule)[0].reason,
  ).toBe('countermovement');
});

test('a force that falls has no rate', () => {
  const falling = { timesS, samples: timesS.map((timeS) => -forceOnCurve(curve, timeS)) };
  const turned = { ...onset, curve: { ...curve, height: -1000 } };
  expect(riseRates(falling, turned, rest, noise, 1000, null, rule).map(({ rate }) => rate)).toEqual(
    Array(5).fill(null),
  );
});

test('no rate without a reason, no reason with a rate', () => {
  for (const [rateHz, refused, changed] of [
    [1000, 'ramped', onset],
    [200, null, onset],
    [1000, null, { ...onset, method: 'line', curve: null }],
  ] as const) {
    for (const { rate, reason } of riseRates(net, changed, rest, noise, rateHz, refused, rule)) {
      expect(rate === null).toBe(reason !== null);
    }
  }
  expect(riseRates(net, { ...onset, method: 'line', curve: null }, rest, noise, 1000, null, rule)[4].reason).toBe(
    'onset-uncertain',
  );
});

test('each sample of a reading departs by a share of the force besides the noise: divided by the root of their number', () => {
  const uOf = (readSampleU: number): number =>
    riseRates(
      net,
      { ...onset, timeS: { value: 1, u: 0 } },
      { ...rest, u: () => 0 },
      { sample: 1e-9, stampS: 0 },
      1000,
      null,
      {
        ...rule,
        readU: 0,
        readSampleU,
      },
    )[3].rate!.u;
  expect(uOf(0)).toBeLessThan(1e-3);
  // 864.66 N after 200 ms; 40 or 41 samples within 20 ms on both sides, and the curve as one more
  expect(Math.abs(uOf(0.01) / ((rule.riseU * 8.6466) / Math.sqrt(41.5) / 0.2) - 1)).toBeLessThan(0.03);
});
