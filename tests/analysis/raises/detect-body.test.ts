import { simulateSet } from '@surae/simulation';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodyDefaults, detectBodyRaises, type Trace } from '../../../packages/analysis/src/index.ts';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';
import { abruptAtTrunk, abruptOnPlatform } from '../../support/abrupt-raises.ts';
import { inRun, runs } from '../../support/runs.ts';

type Request = Parameters<typeof simulateSet>[0];

/** A simulated recording and what is found in it. */
function found(request: Request) {
  const set = simulateSet(request);
  const placement = request.placement as 'trunk' | 'platform';
  return { set, detection: detectBodyRaises(set.trace, placement, set.subject, bodyDefaults) };
}

/** A cosine rise of 60 mm every 2 s after 3 s of standing, at the trunk. */
function cosineTrunk(count: number): Trace {
  const timesS = Float64Array.from({ length: 100 * (6 + 2 * count) }, (_, i) => i / 100);
  const samples = timesS.map((t) =>
    t < 3 || t > 3 + 2 * count ? 9.80665 : 9.80665 + 0.03 * Math.PI ** 2 * Math.cos(Math.PI * (t - 3)),
  );
  const flat = new Float64Array(timesS.length);
  const channel = (axis: 'x' | 'y' | 'z') => ({
    quantity: 'acceleration' as const,
    axis,
    samples: axis === 'z' ? samples : flat,
  });
  return { groups: [{ timesS, channels: [channel('x'), channel('y'), channel('z')] }] };
}

/** Eight knee bends, 0.3 s apart, of somebody of 70 kg on a platform, in sway that a seed draws. */
function kneeBends(depthM: number, bendS: number): Trace {
  const random = createRandom(1);
  const timesS = Float64Array.from({ length: Math.round(100 * (5 + 8 * (bendS + 0.3))) }, (_, i) => i / 100);
  let sway = 0;
  const samples = timesS.map((t) => {
    sway = 0.8 * sway + 0.1 * (random() - 0.5);
    const since = (t - 2) % (bendS + 0.3);
    const bends = t >= 2 && t < 2 + 8 * (bendS + 0.3) && since <= bendS;
    const along = bends ? -2 * depthM * (Math.PI / bendS) ** 2 * Math.cos((2 * Math.PI * since) / bendS) : 0;
    return 70 * (9.80665 + along + sway);
  });
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
}

describe('a set by hand', () => {
  test('ten cosine rises of 60 mm every 2 s: ten raises, 60 mm, tops at 4, 6 ... s', () => {
    const { raises, stance } = detectBodyRaises(cosineTrunk(10), 'trunk', {}, bodyDefaults);
    expect(raises).toHaveLength(10);
    raises.forEach((raise, k) => {
      expect(Math.abs(raise.topS - (4 + 2 * k))).toBeLessThan(0.03);
      // movements that swing into each other share their ends, so that their own length is known to a few parts in a hundred
      expect(Math.abs(raise.heightM - 0.06)).toBeLessThan(0.007);
    });
    expect(stance!.fromS).toBeLessThan(0.5);
  });

  test('standing still is no set', () => {
    const { raises, countHigh } = detectBodyRaises(cosineTrunk(0), 'trunk', {}, bodyDefaults);
    expect([raises.length, countHigh]).toEqual([0, 0]);
  });

  test('a second of recording is too short to hold a set', () => {
    const { groups } = cosineTrunk(0);
    const short = {
      timesS: groups[0].timesS.slice(0, 60),
      channels: groups[0].channels.map((one) => ({ ...one, samples: one.samples.slice(0, 60) })),
    };
    expect(detectBodyRaises({ groups: [short] }, 'trunk', {}, bodyDefaults).raises).toEqual([]);
  });
});

describe('raises that are thrust up and down at once', () => {
  test.each(
    inRun(
      [
        { count: 1, cycleS: 1, riseM: 0.04 },
        { count: 12, cycleS: 0.5, riseM: 0.06, holdShare: 0.2, restShare: 0.2 },
        { count: 100, cycleS: 0.5, riseM: 0.02, holdShare: 0, restShare: 0 },
        { count: 10, cycleS: 2, riseM: 0.045, holdShare: 0.6 },
      ],
      [
        { count: 12, cycleS: 0.5, riseM: 0.06, holdShare: 0.2, restShare: 0.2 },
        { count: 32, cycleS: 0.5, riseM: 0.03, holdShare: 0.05, restShare: 0.3 },
        { count: 1, cycleS: 1, riseM: 0.04 },
        { count: 3, cycleS: 0.6, riseM: 0.03 },
        { count: 30, cycleS: 0.5, riseM: 0.025 },
        { count: 30, cycleS: 0.5, riseM: 0.02, holdShare: 0, restShare: 0 },
        { count: 60, cycleS: 0.7, riseM: 0.03 },
        { count: 100, cycleS: 0.5, riseM: 0.02, holdShare: 0, restShare: 0 },
        { count: 100, cycleS: 0.8, riseM: 0.03, holdShare: 0, restShare: 0 },
        { count: 10, cycleS: 2, riseM: 0.045, holdShare: 0.6 },
      ],
    ),
  )('$count of $cycleS s each are counted, at trunk and platform', (raises) => {
    const trunk = detectBodyRaises(abruptAtTrunk({ ...raises, seed: 1 }), 'trunk', {}, bodyDefaults);
    expect(trunk.raises).toHaveLength(raises.count);
    const platform = detectBodyRaises(abruptOnPlatform({ ...raises, seed: 1 }), 'platform', {}, bodyDefaults);
    expect(platform.raises).toHaveLength(raises.count);
  });
});

test.each(
  inRun(
    [{ count: 12, cycleS: 0.6, riseM: 0.04 }],
    [
      { count: 12, cycleS: 0.6, riseM: 0.04 },
      { count: 30, cycleS: 0.7, riseM: 0.07 },
    ],
  ),
)('$count of $cycleS s whose fall is stopped by the floor are no slower ones that go down twice', (raises) => {
  const trace = abruptAtTrunk({ ...raises, holdShare: 0, restShare: 0, stopS: 0.03, seed: 1 });
  expect(detectBodyRaises(trace, 'trunk', {}, bodyDefaults).raises).toHaveLength(raises.count);
});

describe('simulated sets', () => {
  test.each(['trunk', 'platform'] as const)('%s: one repetition, many, and a 0.8 s beat are counted', (placement) => {
    for (const request of [
      { count: 1, cycleS: 2 },
      { count: inRun(20, 60), cycleS: 2 },
      { count: inRun(12, 20), cycleS: 0.8 },
    ]) {
      const { set, detection } = found({ placement, level: 'typical', seed: 101, ...request });
      expect(detection.raises).toHaveLength(set.truth.repetitions.length);
    }
  });

  test.each(['trunk', 'platform'] as const)(
    '%s: a single clear repetition in a short recording is found',
    (placement) => {
      // seed 101 has 8 s of recording: standing that is left over can be fitted by a second, slower one
      for (const level of ['clean', 'typical'] as const) {
        const { set, detection } = found({ placement, level, seed: 101, count: 1, cycleS: 2 });
        expect(detection.raises).toHaveLength(1);
        expect(Math.abs(detection.raises[0].topS - set.truth.repetitions[0].topS)).toBeLessThan(0.3);
      }
    },
  );

  test('a set whose shape is learnt too closely in the last round is counted as in the round before', () => {
    expect(found({ placement: 'platform', level: 'clean', seed: 227, count: 16 }).detection.raises).toHaveLength(16);
  });

  test('quiet standing under strong sway is no set', () => {
    for (const seed of inRun([108], [103, 108, 115])) {
      for (const placement of ['trunk', 'platform'] as const) {
        expect(found({ placement, level: 'hard', seed, activity: 'quiet' }).detection.raises).toEqual([]);
      }
    }
  });

  test('repetitions that follow each other without a rest are not kept apart by the shape learnt from them', () => {
    const shares = [0.42, 0.08, 0.48, 0.02] as const;
    const { set, detection } = found({ placement: 'trunk', level: 'typical', seed: 30, count: 24, person: { shares } });
    expect(detection.raises).toHaveLength(set.truth.repetitions.length);
  });

  test('rises are those of the body, without a reading of the shape', () => {
    const { set, detection } = found({ placement: 'platform', level: 'clean', seed: 7 });
    const errors = detection.raises.map((raise, k) => raise.heightM - set.truth.repetitions[k].bodyRiseM);
    expect(Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length)).toBeLessThan(0.004);
  });

  test('the motion reaches the same height and lies on the floor between repetitions', () => {
    const { set, detection } = found({ placement: 'trunk', level: 'clean', seed: 7 });
    const { heightM, startS, sampleRateHz } = detection.motion;
    const first = set.truth.repetitions[0];
    const at = Math.round((first.topS - startS) * sampleRateHz);
    expect(Math.abs(heightM[at] - first.bodyRiseM)).toBeLessThan(0.005);
    expect(heightM[Math.round((first.startS - 0.5 - startS) * sampleRateHz)]).toBe(0);
  });

  test('stepping on and off the platform is no repetition, and its weight is the person within its uncertainty', () => {
    const faults = { stepOnChance: 1, stepOffChance: 1, forceOffsetN: 0, forceDriftN: 0, handSupport: 0 };
    const { set, detection } = found({ placement: 'platform', level: 'typical', seed: 12, faults });
    expect(detection.raises).toHaveLength(set.truth.repetitions.length);
    const error = detection.bodyWeightN! - set.subject.bodyMassKg * 9.80665;
    expect(Math.abs(error)).toBeLessThan(Math.max(3 * detection.bodyWeightUN!, 0.005 * detection.bodyWeightN!));
  });

  test('walking and squats at the trunk hold no heel raise', () => {
    for (const activity of ['walking', 'squats'] as const) {
      const { detection } = found({ placement: 'trunk', level: 'typical', seed: 3, activity });
      expect(detection.raises).toEqual([]);
    }
  });

  test('steps on a platform hold no heel raise, at any level of noise', () => {
    for (const level of inRun(['hard'] as const, ['typical', 'hard', 'field'] as const)) {
      const { detection } = found({ placement: 'platform', level, seed: 2, activity: 'walking' });
      expect(detection.raises).toEqual([]);
      expect(detection.issues.some(({ code }) => code === 'movement-outside-set')).toBe(true);
    }
  });

  test('knee bends whose rhythm is that of raises hold none, at the trunk and on a platform', () => {
    for (const [placement, seed] of [
      ['platform', 14],
      ['trunk', 7],
    ] as const) {
      expect(found({ placement, level: 'typical', seed, activity: 'squats' }).detection.raises).toEqual([]);
    }
  });

  test('deep and slow knee bends in a beat hold none: they go further than toes reach', () => {
    const bends = inRun(
      [[0.25, 2.4]] as const,
      [
        [0.2, 4],
        [0.25, 2.4],
        [0.25, 3],
      ] as const,
    );
    for (const [depthM, bendS] of bends) {
      const { raises, countHigh, issues } = detectBodyRaises(kneeBends(depthM, bendS), 'platform', {}, bodyDefaults);
      expect(raises).toEqual([]);
      // the little standing that is left beside them may hide one
      expect(countHigh).toBeLessThanOrEqual(1);
      expect(issues.some(({ code }) => code === 'movement-outside-set')).toBe(true);
    }
  });

  test('three that may be sway alone are not counted, and the range holds them', () => {
    const { detection } = found({ placement: 'platform', level: 'hard', seed: 20, count: 3, cycleS: 2 });
    expect(detection.raises.length).toBeLessThan(3);
    expect(detection.countHigh).toBeGreaterThanOrEqual(3);
  });

  test('steps before a set are left out and the set is counted', () => {
    const person = {
      placement: 'platform',
      level: 'typical',
      seed: 4,
      faults: { stepOnChance: 0, stepOffChance: 0 },
    } as const;
    const steps = simulateSet({ ...person, activity: 'walking' });
    const set = simulateSet({ ...person, count: 12, cycleS: 2 });
    const [first, second] = [steps.trace.groups[0], set.trace.groups[0]];
    const beginS = first.timesS[first.timesS.length - 1] + 0.01 - second.timesS[0];
    const timesS = Float64Array.from([...first.timesS, ...second.timesS.map((t) => t + beginS)]);
    const samples = Float64Array.from([...first.channels[0].samples, ...second.channels[0].samples]);
    const trace: Trace = { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples }] }] };
    const { raises, issues } = detectBodyRaises(trace, 'platform', set.subject, bodyDefaults);
    expect(raises.map(({ topS }) => topS > beginS)).toEqual(Array.from({ length: 12 }, () => true));
    expect(issues.some(({ code, fromS }) => code === 'movement-outside-set' && fromS < beginS)).toBe(true);
  });

  test('a second without samples loses neither of the repetitions beside it', () => {
    const { set } = found({ placement: 'trunk', level: 'typical', seed: 14 });
    const middle = set.truth.repetitions[8];
    const [group] = set.trace.groups;
    const keep = (t: number): boolean => t < middle.endS - 0.3 || t > middle.endS + 0.7;
    const timesS = group.timesS.filter(keep);
    const channels = group.channels.map((one) => ({
      ...one,
      samples: one.samples.filter((_, i) => keep(group.timesS[i])),
    }));
    const { raises, issues } = detectBodyRaises({ groups: [{ timesS, channels }] }, 'trunk', {}, bodyDefaults);
    expect(raises).toHaveLength(set.truth.repetitions.length);
    expect(issues.some((issue) => issue.code === 'gap')).toBe(true);
  });
});

test('twenty seconds without samples hold no repetition, and may have held what their length allows', () => {
  for (const placement of ['trunk', 'platform'] as const) {
    const set = simulateSet({ placement, level: 'typical', seed: 6, count: 26, cycleS: 2 });
    const lost = { fromS: set.truth.repetitions[9].endS, toS: set.truth.repetitions[9].endS + 20 };
    const [group] = set.trace.groups;
    const keep = (t: number): boolean => t < lost.fromS || t > lost.toS;
    const channels = group.channels.map((one) => ({
      ...one,
      samples: one.samples.filter((_, i) => keep(group.timesS[i])),
    }));
    const broken = { groups: [{ timesS: group.timesS.filter(keep), channels }] };
    const { raises, countLow, countHigh } = detectBodyRaises(broken, placement, set.subject, bodyDefaults);
    expect(raises.filter(({ topS }) => topS > lost.fromS && topS < lost.toS)).toEqual([]);
    expect(countLow).toBeLessThanOrEqual(raises.length);
    expect(countHigh).toBeGreaterThanOrEqual(26);
  }
});

describe('laws', () => {
  const { trace } = simulateSet({ placement: 'trunk', level: 'typical', seed: 22, count: 8, cycleS: 2 });
  const plain = detectBodyRaises(trace, 'trunk', {}, bodyDefaults).raises;
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

  test('any rotation of the sensor gives the same raises', () => {
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        const [group] = trace.groups;
        const [x, y, z] = group.channels.map((one) => one.samples);
        const turned = [
          x.map((v, i) => Math.cos(a) * v - Math.sin(a) * y[i]),
          x.map((v, i) => Math.cos(b) * (Math.sin(a) * v + Math.cos(a) * y[i]) - Math.sin(b) * z[i]),
          x.map((v, i) => Math.sin(b) * (Math.sin(a) * v + Math.cos(a) * y[i]) + Math.cos(b) * z[i]),
        ];
        const channels = group.channels.map((one, k) => ({ ...one, samples: turned[k] }));
        const again = detectBodyRaises({ groups: [{ ...group, channels }] }, 'trunk', {}, bodyDefaults).raises;
        expect(again.length).toBe(plain.length);
        again.forEach((raise, k) => expect(Math.abs(raise.topS - plain[k].topS)).toBeLessThan(0.02));
      }),
      runs(1, 20),
    );
  });

  test('a later clock moves every time by as much', () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 5000 }), (laterS) => {
        const groups = trace.groups.map((group) => ({ ...group, timesS: group.timesS.map((t) => t + laterS) }));
        const again = detectBodyRaises({ groups }, 'trunk', {}, bodyDefaults).raises;
        expect(again.length).toBe(plain.length);
        again.forEach((raise, k) => {
          expect(Math.abs(raise.topS - laterS - plain[k].topS)).toBeLessThan(0.02);
          expect(Math.abs(raise.heightM - plain[k].heightM)).toBeLessThan(0.002);
        });
      }),
      runs(1, 20),
    );
  });

  test('the same recording gives the same result twice', () => {
    expect(detectBodyRaises(trace, 'trunk', {}, bodyDefaults).raises).toEqual(plain);
  });
});
