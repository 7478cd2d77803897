import { assess, defaultSettings, InputError, type Trace, withParameters } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { PLAIN_REQUEST } from '../../support/detected-set.ts';

const settings = defaultSettings();

/** A heel that rises by ten centimetres and comes down again once every two seconds, after a stance. */
function heelTrace(count: number, heightM: number): Trace {
  const seconds = 4 + 2 * count + 3;
  const timesS = Float64Array.from({ length: seconds * 100 }, (_, k) => k / 100);
  const samples = timesS.map((t) =>
    t < 4 || t > 4 + 2 * count ? 0 : (heightM / 2) * (1 - Math.cos(Math.PI * (t - 4))),
  );
  return { groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] };
}

test('set A through the whole way: 25 repetitions, 30 a minute, 2.5 m, 1961 J at 80 kg', () => {
  const report = assess(heelTrace(25, 0.1), { ...PLAIN_REQUEST, subject: { bodyMassKg: 80 } }, settings);
  expect(report.count).toMatchObject({ attempted: 25, valid: 25, scored: 25 });
  expect(Math.abs((report.measures.tempo.perMinute ?? 0) - 30)).toBeLessThan(0.02);
  // with no stay at the bottom the floor is known to a millimetre or two only, and the report says so
  const { displacementM, work } = report.measures;
  expect(displacementM?.low ?? Number.NaN).toBeLessThan(2.5);
  expect(displacementM?.high ?? Number.NaN).toBeGreaterThan(2.5);
  expect(Math.abs((displacementM?.value ?? 0) / 2.5 - 1)).toBeLessThan(0.02);
  expect(Math.abs((work.heelJ ?? 0) / 1961.33 - 1)).toBeLessThan(0.02);
});

test.each(['heel', 'foot', 'trunk', 'platform'] as const)(
  'a clean simulated set at the %s is counted and reported whole',
  (placement) => {
    const set = simulateSet({ placement, level: 'clean', seed: 8, count: 8 });
    const subject = { bodyMassKg: set.subject.bodyMassKg, heelLeverM: set.subject.heelLeverM };
    const report = assess(set.trace, { ...PLAIN_REQUEST, placement, subject }, settings);
    expect(report.count.attempted).toBe(8);
    expect(report.kind).toBe(placement === 'heel' || placement === 'foot' ? 'heel-height' : 'body-rise');
    expect(report.repetitions.every((one) => one.work.heelJ !== null || one.work.riseJ !== null)).toBe(true);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  },
);

test('the same trace with the criterion at 60 % and at 95 % of the reference gives more and fewer valid ones', () => {
  const set = simulateSet({ placement: 'heel', level: 'typical', seed: 12 });
  const validAt = (heightFraction: number): number => {
    const changed = withParameters(FLOOR, { heightFraction });
    if (!changed.ok) throw new Error('the range of the parameter must hold these');
    return assess(set.trace, { ...PLAIN_REQUEST, protocol: changed.value }, settings).count.valid;
  };
  expect(validAt(0.6)).toBeGreaterThan(validAt(0.95));
});

test('a shift of the clock moves every time and changes nothing else', () => {
  const trace = heelTrace(6, 0.1);
  const [group] = trace.groups;
  const later: Trace = { groups: [{ ...group, timesS: group.timesS.map((t) => t + 64) }] };
  const [early, late] = [trace, later].map((one) => assess(one, PLAIN_REQUEST, settings));
  expect(late.count).toEqual(early.count);
  late.repetitions.forEach((one, i) => {
    expect(Math.abs(one.topS - 64 - early.repetitions[i].topS)).toBeLessThan(1e-6);
    expect(Math.abs((one.heightM ?? 0) - (early.repetitions[i].heightM ?? 1))).toBeLessThan(1e-6);
  });
});

test('a trace without the channel that the placement needs is refused', () => {
  const request = { ...PLAIN_REQUEST, placement: 'platform' as const };
  expect(() => assess(heelTrace(3, 0.1), request, settings)).toThrow(InputError);
});

test('the length of a string that nobody gave puts heights in doubt, and not how they stand to each other', () => {
  const trace = heelTrace(8, 0.1);
  const [unknown, known] = [{}, { stringRestLengthM: 1e6 }].map((subject) => {
    return assess(trace, { ...PLAIN_REQUEST, subject }, settings).repetitions[3];
  });
  // a string of 10 cm would read 100 mm at 97.9 (geometry of a lever of 180 mm): 2.2 % over the root of 3
  expect(Math.sqrt(unknown.heightUM! ** 2 - known.heightUM! ** 2)).toBeCloseTo(0.00125, 4);
  expect(unknown.percentOfReferenceU).toBeCloseTo(known.percentOfReferenceU!, 1);
});
