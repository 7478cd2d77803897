import { assessPulls, defaultSettings, type PullReport, type PullTestRequest, type Trace } from '@surae/analysis';
import { SEATED_PULL } from '@surae/shared';
import { expect, test } from 'vitest';
import { withScaleU, withScaleUOfBoth, withSlopeU } from '../../../packages/analysis/src/assess/scale-error.ts';
import { exponentialEffort, madeNoise, madeSamples, rampEffort, traceOf } from '../../support/made-pull.ts';
import { seatedTrace } from '../../support/tested-pull.ts';

const settings = defaultSettings();
const report = (trace: Trace, { subject }: Pick<PullTestRequest, 'subject'>): PullReport =>
  assessPulls(trace, { placement: 'platform', side: 'left', protocol: SEATED_PULL, subject }, settings);

test('by hand: 3 N of its own and 1 % of 400 N are 5 N; a figure of zero has no share', () => {
  expect(withSlopeU({ value: 400, u: 3 }, 0.01)).toEqual({ value: 400, u: 5 });
  expect(withSlopeU({ value: 0, u: 3 }, 0.01).u).toBe(3);
});

test('by hand: the zero counts where the reading is from it, and cancels in the net force', () => {
  // 4 N of the slope, 2 N of the zero, 4 N of its own: 16 + 4 + 16 = 36
  const scale = { relativeU: 0.01, zeroU: 2, correlation: 0 };
  expect(withScaleUOfBoth({ gross: { value: 400, u: 4 }, net: { value: 300, u: 4 } }, scale)).toEqual({
    gross: { value: 400, u: 6 },
    net: { value: 300, u: 5 },
  });
  // wholly correlated they add like numbers, wholly against each other they cancel
  expect(withScaleU({ value: 400, u: 0 }, { ...scale, correlation: 1 }).u).toBeCloseTo(6, 12);
  expect(withScaleU({ value: 400, u: 0 }, { ...scale, correlation: -1 }).u).toBeCloseTo(2, 12);
  expect(withScaleU({ value: 200, u: 0 }, { ...scale, correlation: -1 }).u).toBe(0);
});

test('GUM (JCGM 100:2008), H.3.4: the correction at 30 degrees has a standard uncertainty of 0.0041', () => {
  // y1 + 10 y2 with s(y1) = 0.0029, s(y2) = 0.00067 and r = -0.930, from memory
  const line = { relativeU: 0.00067, zeroU: 0.0029, correlation: -0.93 };
  expect(withScaleU({ value: 10, u: 0 }, line).u.toFixed(4)).toBe('0.0041');
});

test('a thousand made sensors scatter as the law says', () => {
  const [slope, zero, own] = [0.004, 1.5, 2];
  const correlation = -0.7;
  const normal = madeNoise(41, 1);
  const forceN = 900;
  let squares = 0;
  const draws = 20_000;
  for (let i = 0; i < draws; i++) {
    const first = normal();
    const second = correlation * first + Math.sqrt(1 - correlation ** 2) * normal();
    // force = (reading - zero) / slope with errors of both, and of the reading itself
    squares += (forceN * slope * first + zero * second + own * normal()) ** 2;
  }
  const found = withScaleU({ value: forceN, u: own }, { relativeU: slope, zeroU: zero, correlation }).u;
  // 0.5 % is the standard error of a standard deviation from so many draws
  expect(Math.abs(Math.sqrt(squares / draws) / found - 1)).toBeLessThan(0.02);
});

test('the zero enters what the sensor reads and no net force; what was not told is said', () => {
  const told = { calibrationRelativeU: 0.01, calibrationZeroU: 6, calibrationCorrelation: -0.5, calibrationId: 'c1' };
  const pulls = seatedTrace(1425);
  const [whole, slopeOnly, exact] = [
    report(pulls, { subject: told }),
    report(pulls, { subject: { calibrationRelativeU: 0.01 } }),
    report(pulls, { subject: { calibrationRelativeU: 0, calibrationZeroU: 0 } }),
  ];
  expect(whole.score.net).toEqual(slopeOnly.score.net);
  const { value, u } = exact.score.gross!;
  expect(whole.score.gross!.u).toBeCloseTo(Math.sqrt(u ** 2 + (0.01 * value) ** 2 + 36 - 0.01 * value * 6), 9);
  expect([whole.calibrationId, whole.calibrationZeroU]).toEqual(['c1', 6]);
  expect([whole, slopeOnly].map(({ withheld }) => withheld.includes('no-zero-error'))).toEqual([false, true]);
  // a push that reads downwards turns what slope and zero share
  const { timesS, samples } = madeSamples({ efforts: [rampEffort(4, 900, 2, 4)], lengthS: 16, sampleRateHz: 500 });
  const turned = report(
    traceOf(
      timesS,
      samples.map((n) => -n),
    ),
    { subject: told },
  );
  expect(turned.polarity.sign).toBe(-1);
  const gross = turned.efforts[0].peak.gross;
  expect(gross.u).toBeGreaterThan(Math.hypot(9, 6));
  expect(() => report(pulls, { subject: { calibrationZeroU: -1 } })).toThrow('calibrationZeroU');
  expect(() => report(pulls, { subject: { calibrationCorrelation: 1.1 } })).toThrow('calibrationCorrelation');
});

test('forty made sensors: forces, rates, impulses and torques scatter as said', () => {
  const [r, zeroU] = [0.03, 4];
  const normal = madeNoise(91, 1);
  const { timesS, samples } = madeSamples({
    efforts: [exponentialEffort(3, 900, 0.05, 3)],
    lengthS: 9,
    sampleRateHz: 500,
    noise: 0.5,
    rest: () => 85,
  });
  const subject = { forefootLeverM: 0.13, calibrationRelativeU: r, calibrationZeroU: zeroU, calibrationId: 'c1' };
  const figures = Array.from({ length: 40 }, () => {
    const [scale, zero] = [1 + r * normal(), zeroU * normal()];
    const made = traceOf(
      timesS,
      samples.map((n) => scale * n + zero),
    );
    const { efforts, score, restLoad, derived } = report(made, { subject });
    const [one] = efforts;
    return {
      net: score.net!,
      gross: score.gross!,
      rate: one.rates[1].rate!,
      impulse: one.impulse,
      rest: restLoad!,
      torque: derived!.bestMean!.newtonMetre!,
    };
  });
  for (const name of ['net', 'gross', 'rate', 'impulse', 'rest'] as const) {
    const values = figures.map((one) => one[name].value);
    const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
    const scatter = Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
    // one recording for all, forty draws, so that a scatter is known to 11 %: what scatters is the scale alone, and the own part of each figure is small beside it
    const said = figures[0][name].u;
    expect(said / scatter, name).toBeGreaterThan(0.7);
    expect(said / scatter, name).toBeLessThan(1.4);
  }
  const [{ torque, net }] = figures;
  const leverU = settings.efforts.signal.leverUM / 0.13;
  expect(torque.u / torque.value).toBeCloseTo(Math.hypot(net.u / net.value, leverU), 9);
});
