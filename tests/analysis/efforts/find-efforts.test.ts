import { type EffortRequest, findEfforts, type IsometricEffort, type Trace } from '@surae/analysis';
import { type Level, simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import '../../support/close.ts';
import { strengthSettings } from '../../support/effort-settings.ts';
import { exponentialEffort, madeNoise, madeSamples, madeTrace, rampEffort, traceOf } from '../../support/made-pull.ts';
import { inRun } from '../../support/runs.ts';

const find: EffortRequest = { polarity: 'find' };
const found = (trace: Trace, request = find) => findEfforts(trace, request, strengthSettings);
const three = [rampEffort(3, 800, 2, 3), rampEffort(13, 900, 2, 3), rampEffort(23, 850, 2, 3)];

/** Everything that must turn with the unit, and everything that must not. */
function forcesOf(effort: IsometricEffort): number[] {
  return [
    effort.peak.net.value,
    effort.peak.net.u,
    effort.bestMean!.net.value,
    effort.impulse.value,
    effort.rest.value,
  ];
}
function timesOf(effort: IsometricEffort): number[] {
  return [effort.onsetS.value, effort.endS.value, effort.peakS, effort.bestMeanFromS!];
}

describe('how many efforts a recording holds', () => {
  test('a quiet trace holds none, with a resting load, drift, noise and knocks', () => {
    const noise = madeNoise(3, 2);
    for (const rest of [() => 0, (t: number) => 85 + t / 6, () => -700]) {
      const { timesS, samples } = madeSamples({ efforts: [], lengthS: 40, sampleRateHz: 500, rest });
      const knocked = samples.map((value, i) => value + noise() + (i % 4000 < 12 ? 150 : 0));
      expect(found(traceOf(timesS, knocked))).toMatchObject({ efforts: [] });
    }
  });

  test('none, one, three and twelve', () => {
    for (const count of [0, 1, 3, 12]) {
      const efforts = Array.from({ length: count }, (_, k) => rampEffort(3 + 9 * k, 600 + 20 * k, 1.5, 3));
      const trace = madeTrace({ efforts, lengthS: 6 + 9 * count, sampleRateHz: 100, noise: 2 });
      expect(found(trace).efforts).toHaveLength(count);
    }
  });

  test.each(['clean', 'typical', 'hard', 'field'] satisfies Level[])('simulated recordings, %s', (level) => {
    for (const kind of ['ramp', 'fast'] as const) {
      for (let seed = 1; seed <= inRun(2, 6); seed++) {
        const { trace, truth } = simulatePulls({ kind, level, seed, sampleRateHz: seed % 2 === 0 ? 80 : 500 });
        expect(found(trace).efforts.map(({ kind }) => kind)).toEqual(truth.efforts.map(() => kind));
      }
    }
  });

  test('an effort that the recording cuts off is none, and is said', () => {
    const trace = madeTrace({
      efforts: [rampEffort(3, 800, 2, 3), rampEffort(12, 800, 2, 30)],
      lengthS: 18,
      sampleRateHz: 200,
      noise: 1,
    });
    const { efforts, others } = found(trace);
    expect(efforts).toHaveLength(1);
    expect(others).toMatchObject([{ reason: 'cut-off' }]);
  });

  test('a push of a quarter of a second is a knock, a dip to 70 % in a hold is no second effort', () => {
    const knock = { onsetS: 20, force: (t: number) => (t > 0 && t < 0.25 ? 400 : 0) };
    const dip = { onsetS: 6.5, force: (t: number) => (t > 0 && t < 0.4 ? -240 : 0) };
    const trace = madeTrace({
      efforts: [rampEffort(3, 800, 2, 3), knock, dip],
      lengthS: 25,
      sampleRateHz: 200,
      noise: 1,
    });
    const { efforts, others } = found(trace);
    expect(efforts).toHaveLength(1);
    expect(others).toMatchObject([{ reason: 'knock' }]);
  });

  test('a leg laid onto the sensor between two pulls is no effort and spoils none', () => {
    const rest = (t: number): number => (t > 11 ? 95 : 10);
    const efforts = found(madeTrace({ efforts: three, lengthS: 32, sampleRateHz: 200, noise: 1, rest })).efforts;
    expect(efforts.map(({ peak }) => Math.round(peak.net.value / 10))).toEqual([80, 90, 85]);
    expect(efforts.map(({ rest }) => Math.round(rest.value / 5))).toEqual([2, 19, 19]);
  });
});

describe('figures of efforts made by hand', () => {
  test('a ramp of 800 N on a leg of 60 N: gross, rest and net apart, each with its uncertainty', () => {
    const trace = madeTrace({ efforts: three, lengthS: 32, sampleRateHz: 1000, noise: 1, rest: (t) => 60 + t / 10 });
    const [first] = found(trace).efforts;
    expect(Math.abs(first.peak.net.value - 800)).toBeLessThan(1.5);
    expect(Math.abs(first.bestMean!.net.value - 800)).toBeLessThan(0.3);
    expect(Math.abs(first.rest.value - 60.6)).toBeLessThan(0.3);
    expect(first.peak.gross.value).toBe(first.peak.net.value + first.rest.value);
    expect(Math.abs(first.plateauS.value - 3.5)).toBeLessThan(0.3);
    // half of the ramp, the hold, half of the release
    expect(Math.abs(first.impulse.value - 800 * (1 + 3 + 0.2))).toBeLessThan(3);
    expect(first.rates.map(({ rate, reason }) => [rate, reason])).toEqual(Array(5).fill([null, 'ramped']));
    for (const { u } of [
      first.onsetS,
      first.endS,
      first.peak.net,
      first.bestMean!.net,
      first.impulse,
      first.rest,
      first.timeToPeakS,
    ]) {
      expect(u).toBeGreaterThan(0);
    }
  });

  // F = 1000 (1 - exp(-t / 0.1)): worked out by hand
  const analytic = [7869.39, 6321.21, 5179.13, 4323.32, 1000 * (1 - Math.exp(-2.5)) * 4];

  test('an exponential rise: onset to a millisecond and every mean rate to 1 %', () => {
    const efforts = [exponentialEffort(3.0004, 1000, 0.1, 1.5), exponentialEffort(8.0002, 1000, 0.1, 1.5)];
    for (const effort of found(madeTrace({ efforts, lengthS: 12, sampleRateHz: 1000, noise: 1 })).efforts) {
      expect(effort.kind).toBe('fast');
      expect(Math.abs(effort.onsetS.value - (effort.onsetS.value < 5 ? 3.0004 : 8.0002))).toBeLessThan(0.001);
      expect(effort.rates.map(({ rate }) => rate!.value)).toBeCloseToEach(analytic, { rtol: 0.01, atol: 0 });
    }
  });

  test.each([1000, 2000])(
    'at %i Hz, where samples are averaged, a bend lies within its uncertainties',
    (sampleRateHz) => {
      const made = { efforts: [exponentialEffort(3.0004, 1000, 0.1, 1.5)], lengthS: 6, sampleRateHz };
      const { timesS, samples } = madeSamples(made);
      const inside = Array.from({ length: 12 }, (_, k) => {
        const noise = madeNoise(1000 + 7919 * k, 1);
        const { onsetS } = found(
          traceOf(
            timesS,
            samples.map((value) => value + noise()),
          ),
        ).efforts[0];
        return Math.abs(onsetS.value - 3.0004) < 2 * onsetS.u;
      });
      expect(inside.filter((one) => one).length).toBeGreaterThan(9);
    },
  );

  test('what the sampling rate does not carry is not given', () => {
    const efforts = [exponentialEffort(3, 1000, 0.1, 1.5)];
    const reasons = (sampleRateHz: number): unknown[] =>
      found(madeTrace({ efforts, lengthS: 8, sampleRateHz, noise: 1 })).efforts[0].rates.map(
        ({ reason, coarse }) => reason ?? coarse,
      );
    expect(reasons(80)).toEqual([...Array<string>(4).fill('rate-too-low'), true]);
    expect(reasons(200)).toEqual([...Array<string>(3).fill('rate-too-low'), false, false]);
    expect(reasons(500)).toEqual(['rate-too-low', false, false, false, false]);
    expect(reasons(1000)).toEqual(Array(5).fill(false));
  });

  test('a dip, creeping tension or a gap before or in the rise leaves no rate, each with its reason', () => {
    const fast = exponentialEffort(3, 1000, 0.1, 1.5);
    const before = (size: number, lengthS: number) => ({
      onsetS: 3 - lengthS,
      force: (t: number) => (t > 0 && t < lengthS ? size * Math.sin((Math.PI * t) / lengthS) : 0),
    });
    const creep = { onsetS: 2.4, force: (t: number) => (t > 0 && t < 0.6 ? 20 * t : 0) };
    const reason = (extra: object): unknown =>
      found(madeTrace({ efforts: [fast], lengthS: 8, sampleRateHz: 1000, noise: 0.5, ...extra })).efforts[0].rates[3]
        .reason;
    expect(reason({})).toBeNull();
    expect(reason({ efforts: [fast, before(-20, 0.2)] })).toBe('countermovement');
    expect(reason({ efforts: [fast, creep] })).toBe('pre-tension');
    const { timesS, samples } = madeSamples({ efforts: [fast], lengthS: 8, sampleRateHz: 1000, noise: 0.5 });
    const kept = timesS.map((timeS, i) => (timeS > 3.1 && timeS < 3.17 ? -1 : i)).filter((i) => i >= 0);
    const holed = traceOf(
      Float64Array.from(kept, (i) => timesS[i]),
      Float64Array.from(kept, (i) => samples[i]),
    );
    expect(found(holed).efforts[0].rates[3].reason).toBe('gap-in-rise');
  });

  test('a rise from nothing to full force in a bend is distinct, one that creeps up is not, a ramp is not asked', () => {
    const start = (effort: object, sampleRateHz = 1000) =>
      found(madeTrace({ efforts: [{ ...rampEffort(3, 800, 2, 3), ...effort }], lengthS: 10, sampleRateHz, noise: 2 }))
        .efforts[0].start;
    expect(start(exponentialEffort(3, 1000, 0.1, 1.5))).toMatchObject({ distinct: 'yes', limitS: 0.005 });
    expect(start(exponentialEffort(3, 1000, 0.1, 1.5), 80)!.limitS).toBeCloseTo(0.0125, 9);
    // 5 N within the first 60 ms, under a noise of 2 N
    const { force } = exponentialEffort(0, 1000, 0.1, 1.5);
    const soft = { force: (t: number) => (t <= 0 ? 0 : 5 * Math.min(1, t / 0.06) + force(t - 0.06)) };
    expect(start(soft)!.distinct).toBe('no');
    expect(start({})).toBeNull();
  });

  test('a gap that holds the rise makes the onset as uncertain as it is long', () => {
    const made = { efforts: [exponentialEffort(3, 1000, 0.1, 1.5)], lengthS: 8, sampleRateHz: 1000, noise: 0.5 };
    const { timesS, samples } = madeSamples(made);
    const kept = timesS.map((timeS, i) => (timeS > 2.8 && timeS < 3.3 ? -1 : i)).filter((i) => i >= 0);
    const [effort] = found(
      traceOf(
        Float64Array.from(kept, (i) => timesS[i]),
        Float64Array.from(kept, (i) => samples[i]),
      ),
    ).efforts;
    expect(effort.onsetS.u).toBeGreaterThan(0.4);
    expect(effort.rates.map(({ reason }) => reason)).toEqual(Array(5).fill('gap-in-rise'));
    expect(effort.start).toEqual({ distinct: 'cannot_tell', withinS: null, limitS: 0.005 });
  });

  test('a single wild sample on the plateau is not the peak', () => {
    const { timesS, samples } = madeSamples({ efforts: three, lengthS: 32, sampleRateHz: 500, noise: 1 });
    const plain = found(traceOf(timesS, samples)).efforts[0];
    const wild = samples.slice();
    wild[Math.round(6.2 * 500)] += 400;
    expect(Math.abs(found(traceOf(timesS, wild)).efforts[0].peak.net.value - plain.peak.net.value)).toBeLessThan(0.5);
  });

  test('clipping and a gap at the peak are said, and refuse the effort', () => {
    const { timesS, samples } = madeSamples({ efforts: three, lengthS: 32, sampleRateHz: 500, noise: 1 });
    const clipped = found(
      traceOf(
        timesS,
        samples.map((value) => Math.min(value, 780)),
      ),
    );
    for (const { acceptance } of clipped.efforts) {
      expect(acceptance).toMatchObject({ accepted: 'no' });
      expect(acceptance.findings.find(({ code }) => code === 'clipped')!.met).toBe('no');
    }
    const kept = timesS.map((timeS, i) => (timeS > 6 && timeS < 6.3 ? -1 : i)).filter((i) => i >= 0);
    const holed = traceOf(
      Float64Array.from(kept, (i) => timesS[i]),
      Float64Array.from(kept, (i) => samples[i]),
    );
    const [first, second] = found(holed).efforts;
    expect(first.acceptance.findings.find(({ code }) => code === 'gap-near-peak')!.met).toBe('no');
    expect(second.acceptance.findings.find(({ code }) => code === 'gap-near-peak')!.met).toBe('yes');
  });

  test('a mark of the tester falls on the effort that it lies in', () => {
    const trace = madeTrace({ efforts: three, lengthS: 32, sampleRateHz: 100, noise: 1 });
    const lifted = found(trace, { polarity: 'find', liftedAtS: [15] }).efforts.map(
      ({ acceptance }) => acceptance.accepted,
    );
    expect(lifted).toEqual(['yes', 'no', 'yes']);
  });
});

describe('laws', () => {
  const pulls = simulatePulls({ kind: 'fast', level: 'typical', seed: 12, sampleRateHz: 1000 }).trace.groups[0];
  const { timesS } = pulls;
  const { samples } = pulls.channels[0];
  const plain = found(traceOf(timesS, samples));
  const close = { rtol: 1e-7, atol: 1e-6 };

  test('a sensor that reads pulls as negative gives the same efforts', () => {
    const turned = found(
      traceOf(
        timesS,
        samples.map((value) => -value),
      ),
    );
    expect(turned.polarity.sign).toBe(-plain.polarity.sign);
    expect(turned.efforts).toEqual(plain.efforts);
  });

  test('another unit turns the forces and leaves the times', () => {
    // 1.5 is no other unit of force; sizes in N stay in the range in which no limit in N is met
    const scaled = found(
      traceOf(
        timesS,
        samples.map((value) => 1.5 * value),
      ),
    );
    scaled.efforts.forEach((effort, k) => {
      expect(forcesOf(effort)).toBeCloseToEach(
        forcesOf(plain.efforts[k]).map((value) => 1.5 * value),
        close,
      );
      expect(timesOf(effort)).toBeCloseToEach(timesOf(plain.efforts[k]), close);
    });
    expect(scaled.efforts).toHaveLength(plain.efforts.length);
  });

  test('a shift in time moves the times and nothing else', () => {
    const moved = found(
      traceOf(
        timesS.map((timeS) => timeS + 100),
        samples,
      ),
    );
    moved.efforts.forEach((effort, k) => {
      expect(timesOf(effort)).toBeCloseToEach(
        timesOf(plain.efforts[k]).map((timeS) => timeS + 100),
        { rtol: 1e-6, atol: 1e-5 },
      );
      expect(forcesOf(effort)).toBeCloseToEach(forcesOf(plain.efforts[k]), { rtol: 1e-4, atol: 1e-2 });
    });
  });

  test('a constant offset moves rest and gross, and nothing else', () => {
    const raised = found(
      traceOf(
        timesS,
        samples.map((value) => value + 250),
      ),
    );
    raised.efforts.forEach((effort, k) => {
      const { rest, peak, ...others } = effort;
      expect(rest.value).toBeCloseTo(plain.efforts[k].rest.value + 250, 6);
      expect(peak.gross.value).toBeCloseTo(plain.efforts[k].peak.gross.value + 250, 6);
      expect([peak.net.value, others.impulse.value, others.onsetS.value]).toBeCloseToEach(
        [plain.efforts[k].peak.net.value, plain.efforts[k].impulse.value, plain.efforts[k].onsetS.value],
        close,
      );
    });
  });

  test('a torque stays a torque', () => {
    const torque = found(
      madeTrace({ efforts: [rampEffort(3, 90, 2, 3)], lengthS: 12, sampleRateHz: 200, noise: 0.1, quantity: 'torque' }),
    );
    expect(torque.unit).toBe('N.m');
    expect(torque.efforts.map(({ unit }) => unit)).toEqual(['N.m']);
  });

  test('the samples are left as they are', () => {
    const before = samples.slice();
    found(traceOf(timesS, samples));
    expect(samples).toEqual(before);
  });
});
