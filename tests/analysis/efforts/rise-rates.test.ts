import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import '../../support/close.ts';
import { restLine } from '../../../packages/analysis/src/efforts/rest-level.ts';
import { forceOnCurve } from '../../../packages/analysis/src/efforts/rise-curve.ts';
import { riseRates } from '../../../packages/analysis/src/efforts/rise-rates.ts';

const rule = effortDefaults.measure;
const curve = { startS: 1, riseS: 0.1, power: 1, height: 1000, startUS: 0.001 };
const onset = { timeS: { value: 1, u: 0.001 }, method: 'curve', curve } as const;
const rest = restLine({ level: 0, u: 0.1, blockSd: 0.1, sampleSd: 1, centreS: 0 }, null, 0)!;
const noise = { sample: 1, stampS: 0 };
const timesS = Float64Array.from({ length: 2000 }, (_, i) => i / 1000);
const net = { timesS, samples: timesS.map((timeS) => forceOnCurve(curve, timeS)) };

// F = 1000 (1 - exp(-t / 0.1)) by hand
test('mean rates of an exponential rise, each with an uncertainty of at least that of the onset', () => {
  const rates = riseRates(net, onset, rest, noise, 1000, null, rule);
  expect(rates.slice(0, 4).map(({ rate }) => rate!.value)).toBeCloseToEach([7869.39, 6321.21, 5179.13, 4323.32], {
    rtol: 1e-4,
    atol: 0,
  });
  // slope after 50 ms: 10000 exp(-0.5) N/s, times 1 ms, over 50 ms
  expect(rates[0].rate!.u).toBeGreaterThan((6065 * 0.001) / 0.05);
});

test('the force is read from the samples, not from the curve alone', () => {
  const raised = { timesS, samples: net.samples.map((value) => 1.02 * value) };
  const rates = riseRates(raised, onset, rest, noise, 1000, null, rule);
  expect(Math.abs(rates[3].rate!.value / 4323.32 - 1.02)).toBeLessThan(0.001);
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
