import { assessPulls, defaultSettings, type PullReport, type PullTestRequest, type Trace } from '@surae/analysis';
import { SEATED_FAST_PULL, SEATED_PULL } from '@surae/shared';
import { simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { exponentialEffort, madeSamples, madeTrace, rampEffort, traceOf } from '../../support/made-pull.ts';

const settings = defaultSettings();
const seated: PullTestRequest = { placement: 'platform', side: 'left', protocol: SEATED_PULL, subject: {} };
const report = (trace: Trace, change: Partial<PullTestRequest> = {}): PullReport =>
  assessPulls(trace, { ...seated, ...change }, settings);

/** Three ramps, held for four seconds each, on a resting leg. */
function three(heights: readonly number[], restN = 85): Trace {
  const efforts = heights.map((height, k) => rampEffort(4 + 12 * k, height, 2, 4));
  return madeTrace({ efforts, lengthS: 6 + 12 * heights.length, sampleRateHz: 500, noise: 0.5, rest: () => restN });
}

/** Every number anywhere in a report, with its place. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}

describe('a seated test worked out by hand', () => {
  // 82 kg; gross best 1510 N left and 1235 N right over a resting leg of 85 N: net 1425 and 1150 N,
  // over 82 kg * 9.80665 m/s2 = 804.1 N that is 1.77 and 1.43 body weights; on a lever of 0.13 m 185 and 150 N.m
  test.each([
    ['left', 1425, 1510, 1.77, 185, 2.26],
    ['right', 1150, 1235, 1.43, 150, 1.82],
  ] as const)('%s', (side, net, gross, weights, torque, perKg) => {
    const subject = { bodyMassKg: 82, forefootLeverM: 0.13, calibrationRelativeU: 0.01, calibrationZeroU: 0.5 };
    const found = report(three([net - 30, net, net - 20]), { side, subject, context: { endReason: 'trials-done' } });
    const { score, trials, derived, restLoad } = found;
    expect([found.test, found.unit, found.side, score.rule, score.unit]).toEqual([
      'isometric',
      'N',
      side,
      'best-mean',
      'N',
    ]);
    expect(Math.abs(score.net!.value - net)).toBeLessThan(0.5);
    expect(Math.abs(score.gross!.value - gross)).toBeLessThan(0.5);
    expect(Math.abs(restLoad!.value - 85)).toBeLessThan(0.2);
    expect(derived!.bestMean!.timesBodyWeight!.value).toBeCloseTo(weights, 2);
    expect(Math.round(derived!.bestMean!.newtonMetre!.value)).toBe(torque);
    expect(derived!.bestMean!.newtonMetrePerKg!.value).toBeCloseTo(perKg, 2);
    expect(trials).toMatchObject({
      accepted: [1, 2, 3],
      bestMeanEffort: 2,
      of: 3,
      consistency: 'good',
      another: [],
      mayRepeat: true,
    });
    expect(Math.abs(trials!.meanOfBest!.value - (net - 50 / 3))).toBeLessThan(0.5);
    expect(found.effort).toEqual({ good: 'yes', reasons: [], used: ['trials', 'plateau'], missing: [] });
    expect(found.end).toEqual({ reasonGiven: 'trials-done', class: 'capacity' });
    expect(found.gate).toEqual({ usable: 'yes', reasons: [] });
    expect([found.withheld, found.issues]).toEqual([[], []]);
  });

  test('the calibration enters every uncertainty of a force: 1 % of 1425 N', () => {
    const known = report(three([1400, 1425, 1410]), { subject: { calibrationRelativeU: 0.01 } });
    const unknown = report(three([1400, 1425, 1410]));
    expect(known.score.net!.u).toBeCloseTo(Math.hypot(unknown.score.net!.u, 14.25), 1);
    expect(known.efforts[1].peak.net.u).toBeGreaterThan(14.2);
    expect(known.restLoad!.u).toBeGreaterThan(0.84);
    expect(known.calibrationRelativeU).toBe(0.01);
    expect(unknown.calibrationRelativeU).toBeNull();
    expect([known.withheld, unknown.withheld].map((reasons) => reasons.includes('no-calibration'))).toEqual([
      false,
      true,
    ]);
    // how far trials agree does not hang on what they share
    expect(known.trials!.spread).toEqual(unknown.trials!.spread);
  });

  test('without mass and lever there are newtons only, and the reasons', () => {
    const { derived, withheld } = report(three([1400, 1425, 1410]));
    expect(derived!.bestMean).toMatchObject({ newtonPerKg: null, timesBodyWeight: null, newtonMetre: null });
    expect(withheld).toEqual(['no-mass-for-strength', 'no-forefoot-lever', 'no-calibration']);
  });
});

describe('what does not count', () => {
  test('no effort: nothing is zero, the gate says so', () => {
    const none = report(madeTrace({ efforts: [], lengthS: 20, sampleRateHz: 200, noise: 1, rest: () => 85 }));
    expect(none).toMatchObject({ efforts: [], trials: null, derived: null, restLoad: null });
    expect([none.score.net, none.score.gross]).toEqual([null, null]);
    expect(none.gate).toEqual({ usable: 'cannot_tell', reasons: ['no-effort'] });
    expect(none.effort!.good).toBe('cannot_tell');
  });

  test('an effort held for half a second is listed with its reason and enters no score', () => {
    const efforts = [rampEffort(4, 900, 2, 0.1), rampEffort(16, 800, 2, 4)];
    const found = report(madeTrace({ efforts, lengthS: 28, sampleRateHz: 500, noise: 0.5, rest: () => 85 }));
    expect(found.efforts.map(({ accepted, reasons }) => [accepted, reasons])).toEqual([
      ['no', ['short-plateau']],
      ['yes', []],
    ]);
    expect(Math.round(found.score.net!.value)).toBe(800);
    expect(found.trials!.accepted).toEqual([2]);
    expect(found.trials!.another).toEqual(['too-few']);
    expect(found.gate).toEqual({ usable: 'cannot_tell', reasons: ['too-few-accepted'] });
  });

  test('a fast push in a strength test needs its plateau as well', () => {
    const efforts = [exponentialEffort(3, 900, 0.05, 0.6), exponentialEffort(13, 900, 0.05, 3)];
    const found = report(madeTrace({ efforts, lengthS: 22, sampleRateHz: 1000, noise: 0.5, rest: () => 85 }));
    expect(found.efforts.map(({ kind, reasons }) => [kind, reasons])).toEqual([
      ['fast', ['short-plateau']],
      ['fast', []],
    ]);
  });

  test('clipping is said, and the clipped effort may have been the best', () => {
    const { timesS, samples } = madeSamples({
      efforts: [800, 820, 1000].map((height, k) => rampEffort(4 + 12 * k, height, 2, 4)),
      lengthS: 42,
      sampleRateHz: 500,
      noise: 0.5,
      rest: () => 85,
    });
    const found = report(
      traceOf(
        timesS,
        samples.map((value) => Math.min(value, 1000)),
      ),
    );
    expect(found.efforts.map(({ reasons }) => reasons)).toEqual([[], [], ['clipped']]);
    expect(found.issues.map(({ code }) => code)).toEqual(['saturated']);
    expect(found.effort).toMatchObject({ good: 'cannot_tell', reasons: ['trial-not-measured'] });
    expect(found.gate.reasons).toEqual(['too-few-accepted', 'doubtful-signal']);
  });

  test('warm-up pushes in the file: listed with their reason, left out of trials, consistency and what is asked for next', () => {
    const trace = three([450, 675, 880, 900, 905]);
    const guessed = report(trace);
    expect(guessed.warmUp).toEqual({ told: null, efforts: [1, 2], undecided: [] });
    expect(guessed.efforts.map(({ accepted, reasons }) => [accepted, reasons])).toEqual([
      ...Array<unknown>(2).fill(['no', ['warm-up']]),
      ...Array<unknown>(3).fill(['yes', []]),
    ]);
    expect(guessed.trials).toMatchObject({ accepted: [3, 4, 5], consistency: 'good', another: [] });
    expect(guessed.trials!.variation).toBeLessThan(0.02);
    expect(guessed.effort).toMatchObject({ good: 'yes' });
    expect(guessed.gate.usable).toBe('yes');
    const told = report(trace, { context: { warmUpPushes: 3 } });
    expect(told.warmUp).toEqual({ told: 3, efforts: [1, 2, 3], undecided: [] });
    expect(told.trials).toMatchObject({ accepted: [4, 5], another: ['too-few'] });
    expect(told.gate.reasons).toEqual(['too-few-accepted']);
    const none = report(trace, { context: { warmUpPushes: 0 } });
    expect(none.trials!.accepted).toEqual([1, 2, 3, 4, 5]);
    expect(none.trials!.variation).toBeGreaterThan(0.2);
    expect(report(three([900, 450, 905, 910])).warmUp).toEqual({ told: null, efforts: [], undecided: [2] });
    expect(() => report(trace, { context: { warmUpPushes: 1.5 } })).toThrow('warmUpPushes');
  });

  test('a warm-up push at the end of the range of the sensor was no maximum', () => {
    const { timesS, samples } = madeSamples({
      efforts: [1200, 900, 905].map((n, k) => rampEffort(4 + 12 * k, n, 2, 4)),
      lengthS: 42,
      sampleRateHz: 500,
      noise: 0.5,
    });
    const clipped = traceOf(
      timesS,
      samples.map((value) => Math.min(value, 1000)),
    );
    expect(report(clipped, { placement: 'inline' }).effort!.good).toBe('cannot_tell');
    const told = report(clipped, { placement: 'inline', context: { warmUpPushes: 1 } });
    expect(told.effort).toMatchObject({ good: 'yes', reasons: [] });
  });

  test('a plate that was zeroed with the leg on it, a cell below zero', () => {
    const codes = (trace: Trace, change: Partial<PullTestRequest> = {}) =>
      report(trace, change).issues.map(({ code }) => code);
    const onPlate = three([900, 910, 905], 0);
    expect(codes(onPlate)).toEqual(['tare-left-on']);
    expect(codes(onPlate, { placement: 'inline' })).toEqual([]);
    expect(codes(three([900, 910, 905], -60), { placement: 'inline', subject: { polarity: 'positive' } })).toEqual([
      'tare-left-on',
    ]);
    expect(codes(three([900, 910, 905], 25))).toEqual([]);
    // 3 % of the weight of 100 kg are 29.4 N
    expect(codes(three([900, 910, 905], 25), { subject: { bodyMassKg: 100 } })).toEqual(['tare-left-on']);
  });

  test('80 samples a second: the rate is coarse, and said', () => {
    const efforts = [3, 13, 23].map((atS) => rampEffort(atS, 900, 2, 4));
    const found = report(madeTrace({ efforts, lengthS: 33, sampleRateHz: 80, noise: 0.5, rest: () => 85 }));
    expect(found.issues.map(({ code }) => code)).toEqual(['coarse-rate']);
    expect(found.gate.usable).toBe('yes');
  });

  test('an unknown side and another placement', () => {
    const { side, ...unsided } = seated;
    expect(side).toBe('left');
    const found = assessPulls(three([900, 910, 905]), unsided, settings);
    expect([found.side, found.gate.reasons]).toEqual([null, ['side-unknown']]);
    const inline = report(three([900, 910, 905]), { placement: 'inline' });
    expect(inline.protocol.fingerprint).not.toBe(found.protocol.fingerprint);
  });
});

describe('a fast test', () => {
  const { trace, truth } = simulatePulls({ kind: 'fast', level: 'clean', seed: 5, sampleRateHz: 1000, count: 6 });
  const fast = report(trace, { protocol: SEATED_FAST_PULL, placement: 'inline' });

  test('is scored by the best three rates over 100 ms, in N/s', () => {
    expect(fast.efforts).toHaveLength(truth.efforts.length);
    const ones = fast.efforts
      .filter(({ accepted }) => accepted === 'yes')
      .map(({ rates }) => rates[1].rate!.value)
      .sort((a, b) => b - a);
    expect(ones.length).toBeGreaterThanOrEqual(3);
    expect(fast.score).toMatchObject({ rule: 'mean-of-best-rates', unit: 'N/s', gross: null, effort: null });
    expect(fast.score.net!.value).toBeCloseTo((ones[0] + ones[1] + ones[2]) / 3, 6);
    expect(fast.effort).toBeNull();
  });

  test('a ramp in it does not count, and 80 samples a second give no score', () => {
    const ramps = report(three([900, 910, 905]), { protocol: SEATED_FAST_PULL });
    expect(ramps.efforts.map(({ reasons }) => reasons)).toEqual(Array(3).fill(['not-fast']));
    const slow = simulatePulls({ kind: 'fast', level: 'clean', seed: 5, sampleRateHz: 80, count: 6 }).trace;
    const found = report(slow, { protocol: SEATED_FAST_PULL });
    expect(found.score.net).toBeNull();
    expect(found.withheld).toContain('no-rate');
  });
});

describe('laws', () => {
  const { trace } = simulatePulls({ kind: 'ramp', level: 'typical', seed: 12, sampleRateHz: 500, count: 4 });
  const { timesS, channels } = trace.groups[0];
  const { samples } = channels[0];
  const subject = {
    bodyMassKg: 70,
    forefootLeverM: 0.13,
    calibrationRelativeU: 0.005,
    calibrationZeroU: 0.3,
    calibrationId: 'c1',
  };
  const plain = report(traceOf(timesS, samples), { subject });

  test('a report is plain JSON: no NaN, no infinity, nothing undefined', () => {
    for (const one of [plain, report(three([])), report(three([900]))]) {
      expect(JSON.parse(JSON.stringify(one))).toEqual(one);
      for (const [path, value] of numbersIn(one)) expect(Number.isFinite(value), path).toBe(true);
    }
  });

  test('a shift in time moves times and nothing else', () => {
    const moved = report(
      traceOf(
        timesS.map((timeS) => timeS + 100),
        samples,
      ),
      { subject },
    );
    expect(moved.efforts.map(({ onsetS }) => onsetS.value)).toBeCloseToEach(
      plain.efforts.map(({ onsetS }) => onsetS.value + 100),
      { rtol: 0, atol: 1e-4 },
    );
    expect(moved.score.net!.value).toBeCloseTo(plain.score.net!.value, 3);
    expect(moved.trials!.accepted).toEqual(plain.trials!.accepted);
    expect(moved.gate).toEqual(plain.gate);
  });

  test('a common scale turns forces and leaves times, ratios and verdicts', () => {
    const scaled = report(
      traceOf(
        timesS,
        samples.map((value) => 1.25 * value),
      ),
      { subject },
    );
    expect(scaled.score.net!.value).toBeCloseTo(1.25 * plain.score.net!.value, 6);
    expect(scaled.derived!.bestMean!.timesBodyWeight!.value).toBeCloseTo(
      1.25 * plain.derived!.bestMean!.timesBodyWeight!.value,
      9,
    );
    expect(scaled.trials!.variation).toBeCloseTo(plain.trials!.variation!, 9);
    expect(scaled.trials!.consistency).toBe(plain.trials!.consistency);
    expect(scaled.efforts.map(({ endS }) => endS.value)).toBeCloseToEach(
      plain.efforts.map(({ endS }) => endS.value),
      { rtol: 0, atol: 1e-6 },
    );
  });

  test('a turned sensor gives the same report but for its sign', () => {
    const turned = report(
      traceOf(
        timesS,
        samples.map((value) => -value),
      ),
      { subject },
    );
    expect(turned.polarity.sign).toBe(-plain.polarity.sign);
    expect({ ...turned, polarity: null }).toEqual({ ...plain, polarity: null });
  });

  test('a torque gives N.m and N.m/kg, never a force', () => {
    const efforts = [3, 13, 23].map((atS) => rampEffort(atS, 90, 2, 4));
    const torque = madeTrace({ efforts, lengthS: 33, sampleRateHz: 500, noise: 0.05, quantity: 'torque' });
    const found = report(torque, { placement: 'inline', subject });
    expect([found.unit, found.score.unit]).toEqual(['N.m', 'N.m']);
    expect(found.derived!.bestMean).toMatchObject({ newton: null, newtonPerKg: null, timesBodyWeight: null });
    expect(found.derived!.bestMean!.newtonMetrePerKg!.value).toBeCloseTo(90 / 70, 2);
    expect(found.withheld).toEqual(['torque-only']);
  });

  test('a settings file reaches the method, a protocol the rules', () => {
    const longer = {
      ...SEATED_PULL,
      parameters: { ...SEATED_PULL.parameters, plateauLeast: { ...SEATED_PULL.parameters.plateauLeast, value: 9 } },
    };
    const strict = report(three([900, 910, 905]), { protocol: longer });
    expect(strict.efforts.map(({ reasons }) => reasons)).toEqual(Array(3).fill(['short-plateau']));
    const deaf = assessPulls(three([900, 910, 905]), seated, {
      ...settings,
      efforts: { ...settings.efforts, pull: { ...settings.efforts.pull, leastN: 1200 } },
    });
    expect(deaf.efforts).toEqual([]);
  });
});
