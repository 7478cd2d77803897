import { assess, type Channel, defaultSettings, type Quantity, type Trace } from '@surae/analysis';
import { simulateSet } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { signalIssues } from '../../../packages/analysis/src/assess/signal-issues.ts';
import { PLAIN_REQUEST } from '../../support/detected-set.ts';

const settings = defaultSettings();
const LEVELS = ['clean', 'typical', 'hard', 'field', 'free'] as const;
const PLACEMENTS = ['heel', 'foot', 'trunk', 'platform'] as const;

const codes = (trace: Trace, placement: (typeof PLACEMENTS)[number]): string[] =>
  signalIssues(trace, placement, settings.judging.gravityMps2, settings.signal).map(({ code }) => code);

/** The trace with the samples of one quantity changed. */
function changed(trace: Trace, quantity: Quantity, change: (sample: number) => number): Trace {
  const of = (channel: Channel): Channel =>
    channel.quantity === quantity ? { ...channel, samples: channel.samples.map(change) } : channel;
  return { groups: trace.groups.map((group) => ({ ...group, channels: group.channels.map(of) })) };
}

const typical = (placement: (typeof PLACEMENTS)[number]): Trace =>
  simulateSet({ placement, level: 'typical', seed: 31 }).trace;

describe('a signal of a person', () => {
  test.each(PLACEMENTS.flatMap((placement) => LEVELS.map((level) => ({ placement, level }))))(
    'is not suspected: $placement, $level',
    ({ placement, level }) => {
      for (let seed = 301; seed < 304; seed += 1) {
        const found = codes(simulateSet({ placement, level, seed }).trace, placement);
        expect(found.filter((code) => code !== 'uneven-sampling')).toEqual([]);
      }
    },
  );

  test('is not suspected for a few stray samples beyond every limit', () => {
    let index = 0;
    const strayed = changed(typical('heel'), 'heel-height', (sample) => (index++ % 500 === 7 ? 50 : sample));
    expect(codes(strayed, 'heel')).toEqual([]);
  });
});

describe('a signal in another unit than its file says', () => {
  test.each([
    ['heights in metres, called millimetres', 'heel', 'heel-height', 1e-3, 'flat'],
    ['heights in millimetres, called metres', 'heel', 'heel-height', 1000, 'implausible-size'],
    ['newtons, called kilonewtons', 'platform', 'force', 1000, 'implausible-size'],
    ['kilograms, called newtons', 'platform', 'force', 1 / 9.80665, 'implausible-size'],
    ['m/s2, called g', 'trunk', 'acceleration', 9.80665, 'implausible-size'],
    ['g, called m/s2', 'foot', 'acceleration', 1 / 9.80665, 'implausible-size'],
    ['degrees, called radians', 'foot', 'angular-velocity', 180 / Math.PI, 'implausible-size'],
    ['a height whose sign is turned', 'heel', 'heel-height', -1, 'upside-down'],
    ['a force whose sign is turned', 'platform', 'force', -1, 'upside-down'],
    ['a height that is nothing', 'heel', 'heel-height', 0, 'flat'],
    ['a force that is nothing', 'platform', 'force', 0, 'flat'],
    ['an acceleration that is nothing', 'trunk', 'acceleration', 0, 'flat'],
  ] as const)('is noticed: %s', (_, placement, quantity, factor, code) => {
    expect(codes(typical(placement), placement)).toEqual([]);
    expect(
      codes(
        changed(typical(placement), quantity, (sample) => sample * factor),
        placement,
      ),
    ).toContain(code);
  });

  test('is noticed where an axis of an accelerometer stays at its limit', () => {
    const limited = changed(typical('trunk'), 'acceleration', (sample) => Math.max(-5, Math.min(5, sample)));
    expect(codes(limited, 'trunk')).toEqual(['implausible-size']);
  });

  test.each([
    ['heel', 'heel-height', 0.06],
    ['platform', 'force', 1.02],
    ['foot', 'acceleration', 0.97],
    ['foot', 'angular-velocity', 0.4],
    ['trunk', 'acceleration', 1],
  ] as const)('says where the samples of a sensor at its limit are: %s, %s', (placement, quantity, share) => {
    const whole = typical(placement);
    const { timesS, channels } = whole.groups[0];
    const own = channels.filter((one) => one.quantity === quantity).map(({ samples }) => samples);
    const size = quantity === 'heel-height' ? 1 : Math.max(...own.map((one) => one.toSorted()[one.length >> 1]));
    const limit = share * (quantity === 'angular-velocity' ? 1 : size);
    const limited = changed(whole, quantity, (sample) => Math.min(limit, sample));
    const { gravityMps2 } = settings.judging;
    const found = signalIssues(limited, placement, gravityMps2, settings.signal).find(
      ({ code }) => code === 'saturated',
    )!;
    expect(found).toMatchObject({ severity: 'warning', details: { quantity, limit } });
    const beyond = own.flatMap((one) => [...one.keys()].filter((i) => one[i] >= limit).map((i) => timesS[i]));
    expect([found.fromS, found.toS]).toEqual([Math.min(...beyond), Math.max(...beyond)]);
  });

  test('of an empty platform and of a heel on the floor is no limit', () => {
    const offset = changed(typical('platform'), 'force', (sample) => Math.max(0, sample - 600));
    expect(codes(offset, 'platform')).not.toContain('saturated');
    const floor = changed(typical('heel'), 'heel-height', (sample) => Math.max(0.01, sample));
    expect(codes(floor, 'heel')).not.toContain('saturated');
  });

  test('keeps its issues, its place and a doubtful gate in the report', () => {
    const kilo = changed(typical('platform'), 'force', (sample) => sample * 1000);
    const report = assess(kilo, { ...PLAIN_REQUEST, placement: 'platform', side: 'left' }, settings);
    const { timesS } = kilo.groups[0];
    const [first] = report.issues;
    expect(first).toMatchObject({ code: 'implausible-size', severity: 'warning', details: { unit: 'N', most: 3000 } });
    expect([first.fromS, first.toS]).toEqual([timesS[0], timesS[timesS.length - 1]]);
    expect(report.gate).toMatchObject({ usable: 'cannot_tell', reasons: ['doubtful-signal'] });
  });
});

test('gravity without a direction is said: a sensor that turns over and over', () => {
  for (const placement of ['foot', 'trunk'] as const) {
    const [{ timesS, channels }] = typical(placement).groups;
    const turned = channels.map((one) => {
      if (one.quantity !== 'acceleration') return one;
      const part = one.axis === 'x' ? Math.cos : one.axis === 'y' ? Math.sin : () => 0.1;
      return { ...one, samples: timesS.map((timeS) => 9.8 * part(0.7 * timeS) + 0.05 * Math.sin(40 * timeS)) };
    });
    expect(codes({ groups: [{ timesS, channels: turned }] }, placement)).toEqual(['orientation']);
  }
});

describe('sample times', () => {
  const sampled = (times: readonly number[]): Trace => ({
    groups: [
      {
        timesS: Float64Array.from(times),
        channels: [
          { quantity: 'heel-height', axis: null, samples: Float64Array.from(times, (at) => 0.1 * Math.sin(at) ** 2) },
        ],
      },
    ],
  });
  const every = (intervalS: number, count: number, from = 0) =>
    Array.from({ length: count }, (_, i) => from + i * intervalS);

  test('of 25 Hz are quick enough, of 15 Hz are not', () => {
    expect(codes(sampled(every(0.04, 400)), 'heel')).toEqual([]);
    expect(codes(sampled(every(1 / 15, 400)), 'heel')).toEqual(['low-rate']);
  });

  test('of two rates in one recording are uneven', () => {
    expect(codes(sampled([...every(0.01, 500), ...every(0.03, 300, 5)]), 'heel')).toEqual(['uneven-sampling']);
  });

  test('of nothing, and of a placement without its channel, say nothing', () => {
    expect(codes({ groups: [] }, 'heel')).toEqual([]);
    expect(codes(sampled([0, 1]), 'trunk')).toEqual([]);
  });
});
