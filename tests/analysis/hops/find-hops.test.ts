import { findHops, type HopRequest, hopDefaults, type Trace } from '@surae/analysis';
import { HOP_SERIES } from '@surae/shared';
import { simulateHops } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { madeHopTrace } from '../../support/made-hops.ts';

const { parameters } = HOP_SERIES;
const platform: HopRequest = { placement: 'platform', parameters };
const usual = { count: 22, contactS: 0.25, flightS: 0.2, massKg: 70, sampleRateHz: 1000 };
const seriesOf = (trace: Trace, request: Partial<HopRequest> = {}) =>
  findHops(trace, { ...platform, ...request }, hopDefaults);

function withForce(trace: Trace, change: (value: number, i: number) => number, shiftS = 0): Trace {
  const [{ timesS, channels }] = trace.groups;
  return {
    groups: [
      {
        timesS: timesS.map((timeS) => timeS + shiftS),
        channels: channels.map((channel) => ({ ...channel, samples: channel.samples.map(change) })),
      },
    ],
  };
}

describe('on a platform', () => {
  test('by hand: 22 hops of a quarter of a second down and a fifth up', () => {
    const series = seriesOf(madeHopTrace(usual));
    expect([series.found, series.reason]).toEqual(['yes', null]);
    expect(series.count).toEqual({ hops: 22, low: 22, high: 22, analysed: 15, complete: 'yes' });
    const { contactS, flightS, heightM, ratio, stiffnessNpm, periodS } = series.measures;
    expect(Math.abs(contactS.mean!.value - 0.25)).toBeLessThan(0.001);
    expect(Math.abs(flightS.mean!.value - 0.2)).toBeLessThan(0.001);
    expect(Math.abs(periodS.mean!.value - 0.45)).toBeLessThan(0.0005);
    // 9.80665 x 0.04 / 8 = 4.90 cm; 0.2 / 0.25 = 0.8
    expect(Math.abs(heightM.mean!.value - 0.049)).toBeLessThan(0.001);
    expect(Math.abs(ratio.mean!.value - 0.8)).toBeLessThan(0.01);
    // 70 pi 0.45 / (0.0625 (0.45 / pi - 0.0625)) = 19611 N/m; the mass is read from the hops
    expect(Math.abs(stiffnessNpm.mean!.value / 19_611 - 1)).toBeLessThan(0.02);
    expect(Math.abs(series.massKg!.value - 70)).toBeLessThan(0.2);
    expect(contactS.perHop!.low).toBeLessThanOrEqual(0);
    expect(contactS.perHop!.high).toBeGreaterThanOrEqual(0);
  });

  test('the two cautions that never leave', () => {
    for (const count of [0, 3, 22]) {
      const { cautions } = seriesOf(madeHopTrace({ ...usual, count: Math.max(1, count) }));
      expect(cautions.slice(0, 2)).toEqual(['ratio-is-no-clearance', 'leg-not-seen']);
    }
  });

  test('a shift in time moves the hops and nothing else', () => {
    const { trace } = simulateHops({ placement: 'platform', level: 'hard', seed: 8 });
    const plain = seriesOf(trace);
    const later = seriesOf(withForce(trace, (value) => value, 100));
    expect(later.hops).toHaveLength(plain.hops.length);
    later.hops.forEach((hop, k) => {
      expect(hop.takeOffS! - plain.hops[k].takeOffS!).toBeCloseTo(100, 6);
      if (hop.contactS !== null) expect(hop.contactS.value).toBeCloseTo(plain.hops[k].contactS!.value, 6);
    });
  });

  test('a zero that is off changes neither hops nor mass', () => {
    const plain = seriesOf(madeHopTrace(usual));
    const off = seriesOf(madeHopTrace({ ...usual, zeroN: 50 }));
    expect(off.zeroN).toBeCloseTo(50, 6);
    expect(off.massKg!.value).toBeCloseTo(plain.massKg!.value, 3);
    expect(off.measures.contactS.mean!.value).toBeCloseTo(plain.measures.contactS.mean!.value, 6);
  });

  test('kilograms under the name of newtons are not taken for a person', () => {
    const wrong = seriesOf(withForce(madeHopTrace(usual), (value) => value / 9.80665));
    expect([wrong.found, wrong.reason, wrong.hops]).toEqual(['cannot_tell', 'weight-differs', []]);
    const half = seriesOf(
      withForce(madeHopTrace(usual), (value) => value / 2),
      { bodyMassKg: 70 },
    );
    expect(half.reason).toBe('weight-differs');
  });

  test('a platform far from its zero is not judged', () => {
    expect(seriesOf(madeHopTrace({ ...usual, zeroN: 300 })).reason).toBe('not-zeroed');
  });

  test('under 500 Hz hops are counted and no times are given', () => {
    const slow = seriesOf(madeHopTrace({ ...usual, sampleRateHz: 250 }));
    expect(slow.count).toMatchObject({ hops: 22, analysed: 0 });
    expect(slow.withheld).toEqual(['low-rate']);
    expect(slow.measures.contactS.mean).toBeNull();
    expect(slow.hops.every((hop) => hop.contactS === null && hop.flightS === null && hop.stiffnessNpm === null)).toBe(
      true,
    );
    const fits = seriesOf(madeHopTrace({ ...usual, sampleRateHz: 500 }));
    expect(fits.withheld).toEqual([]);
  });

  test('too few hops for those that are analysed, and fewer than asked', () => {
    const short = seriesOf(madeHopTrace({ ...usual, count: 5 }));
    expect(short.count).toMatchObject({ hops: 5, analysed: 0, complete: 'no' });
    expect(short.withheld).toContain('too-few-hops');
    expect(short.cautions).toContain('fewer-than-asked');
    expect(seriesOf(madeHopTrace({ ...usual, count: 30 })).cautions).toContain('more-than-asked');
  });

  test('one jump is no series', () => {
    expect(seriesOf(madeHopTrace({ ...usual, count: 1, flightS: 0.45 }))).toMatchObject({
      found: 'no',
      reason: 'no-hops',
      hops: [],
    });
  });

  test('a gap that hides a hop widens the count', () => {
    const [{ timesS, channels }] = madeHopTrace(usual).groups;
    const stays = (_: number, i: number): boolean => timesS[i] < 4.3 || timesS[i] > 4.85;
    const holed = {
      groups: [
        {
          timesS: timesS.filter(stays),
          channels: channels.map((one) => ({ ...one, samples: one.samples.filter(stays) })),
        },
      ],
    };
    const series = seriesOf(holed);
    expect(series.count.low).toBeLessThanOrEqual(22);
    expect(series.count.high).toBeGreaterThanOrEqual(22);
    expect(series.cautions).toContain('gaps');
  });

  test('a given mass that is not that of the hops is said', () => {
    expect(seriesOf(madeHopTrace(usual), { bodyMassKg: 80 }).cautions).toContain('mass-differs');
    expect(seriesOf(madeHopTrace(usual), { bodyMassKg: 70 }).cautions).not.toContain('mass-differs');
  });
});

describe('by a sensor on the foot', () => {
  const foot: Partial<HopRequest> = { placement: 'foot', bodyMassKg: 70 };

  test('gives the hops with wide uncertainties, and says that they come from the foot', () => {
    const { trace, truth } = simulateHops({ placement: 'foot', level: 'typical', seed: 5, massKg: 70 });
    const series = seriesOf(trace, foot);
    expect(series.hops).toHaveLength(truth.hops.length);
    expect(series.cautions).toContain('times-by-foot-sensor');
    expect(series.measures.contactS.mean!.u).toBeGreaterThan(0.01);
  });

  test('without a mass there is no stiffness, and it is said', () => {
    const { trace } = simulateHops({ placement: 'foot', level: 'typical', seed: 5 });
    const series = seriesOf(trace, { placement: 'foot' });
    expect([series.measures.stiffnessNpm.mean, series.withheld]).toEqual([null, ['no-body-mass']]);
    expect(series.measures.ratio.mean).not.toBeNull();
  });

  test('without a gyroscope, or under 200 Hz, hops are counted and no times are given', () => {
    const alone = simulateHops({ placement: 'foot', level: 'typical', seed: 5, gyroscope: false });
    expect(seriesOf(alone.trace, foot)).toMatchObject({
      found: 'cannot_tell',
      reason: 'strides-possible',
      count: { hops: alone.truth.hops.length, analysed: 0 },
      withheld: ['no-gyroscope'],
    });
    const slow = simulateHops({ placement: 'foot', level: 'typical', seed: 5, sampleRateHz: 100 });
    expect(seriesOf(slow.trace, foot)).toMatchObject({
      count: { hops: slow.truth.hops.length, analysed: 0 },
      withheld: ['low-rate'],
    });
  });
});
