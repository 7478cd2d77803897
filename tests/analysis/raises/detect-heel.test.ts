import { type Level, type SimulatedSet, type SimulatedTrace, simulateSet } from '@surae/simulation';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../packages/analysis/src/assess/defaults/heel.ts';
import { detectHeelRaises } from '../../../packages/analysis/src/raises/detect-heel.ts';
import type { Detection } from '../../../packages/analysis/src/raises/detection.ts';
import { createRandom } from '../../../packages/analysis/src/signal/random.ts';

const kinds = [
  ['heel displacement', 'heel', true],
  ['foot with gyroscope', 'foot', true],
  ['foot without', 'foot', false],
] as const;
type Placement = 'heel' | 'foot';

function detect(trace: SimulatedTrace, placement: Placement, subject: SimulatedSet['subject']): Detection {
  const { heelLeverM, stringRestLengthM } = subject;
  const foot = { heelLeverM, ...(stringRestLengthM === undefined ? {} : { stringRestLengthM }) };
  return detectHeelRaises(trace, placement, foot, heelDefaults);
}

/** Raises of 80 mm by a string: pushed off at once and slowly to the top, from which the heel falls until the floor stops it. */
function droppedHeels(count: number): SimulatedTrace {
  const random = createRandom(count);
  const eased = (way: number): number => way * way * (3 - 2 * way);
  const risen = (since: number): number => eased(1 - Math.max(0, 1 - since / 0.7) ** 2.2);
  const fallen = (since: number): number => eased(Math.min(1, Math.max(0, since - 0.9) / 0.7) ** 1.5);
  const timesS = Float64Array.from({ length: 100 * (6 + 2 * count) }, (_, i) => i / 100);
  let sway = 0;
  const samples = timesS.map((t) => {
    sway = 0.95 * sway + 0.0004 * (random() - 0.5);
    const since = (t - 3) % 1.8;
    return t < 3 || t >= 3 + 1.8 * count ? sway : sway + 0.08 * (risen(since) - fallen(since));
  });
  return { groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] };
}

/** Squared sines over standing, each from a time on, so long and so high: what a string at the heel reads of 12 s. */
function humps(list: readonly (readonly [fromS: number, lastsS: number, heightM: number])[]): SimulatedTrace {
  const random = createRandom(1);
  let sway = 0;
  const timesS = Float64Array.from({ length: 1200 }, (_, i) => i / 100);
  const samples = timesS.map((t) => {
    sway = 0.95 * sway + 0.0004 * (random() - 0.5);
    return list.reduce((sum, [fromS, lastsS, heightM]) => {
      const share = (t - fromS) / lastsS;
      return share < 0 || share > 1 ? sum : sum + heightM * Math.sin(Math.PI * share) ** 2;
    }, sway);
  });
  return { groups: [{ timesS, channels: [{ quantity: 'heel-height', axis: null, samples }] }] };
}

/** The trace with each sample, or each time, changed. */
function changed(
  trace: SimulatedTrace,
  timeOf: (timeS: number) => number,
  keep: (timeS: number) => boolean = () => true,
): SimulatedTrace {
  return {
    groups: trace.groups.map(({ timesS, channels }) => {
      const kept = [...timesS.keys()].filter((i) => keep(timesS[i]));
      return {
        timesS: Float64Array.from(kept, (i) => timeOf(timesS[i])),
        channels: channels.map((channel) => ({
          ...channel,
          samples: Float64Array.from(kept, (i) => channel.samples[i]),
        })),
      };
    }),
  };
}

describe.each(kinds)('%s', (_, placement, gyroscope) => {
  test.each(['clean', 'typical', 'hard', 'field'] as const)('counts six %s sets of ordinary length', (level: Level) => {
    for (let seed = 301; seed <= 306; seed++) {
      const set = simulateSet({ placement, level, seed, gyroscope, count: 12, cycleS: 2 });
      const found = detect(set.trace, placement, set.subject);
      const inGap = set.truth.repetitions.length - found.raises.length;
      // a repetition that a gap swallows must at least lie within the bounds of the count
      expect(found.countLow).toBeLessThanOrEqual(set.truth.repetitions.length);
      expect(found.countHigh).toBeGreaterThanOrEqual(set.truth.repetitions.length);
      if (found.motion.gaps.length === 0) expect([level, seed, inGap]).toEqual([level, seed, 0]);
    }
  });

  test.each([1, 2, 100])('counts a set of %d', (count) => {
    const set = simulateSet({ placement, level: 'typical', seed: 311, gyroscope, count, cycleS: 1.6 });
    expect(detect(set.trace, placement, set.subject).raises.length).toBe(count);
  });

  test.each([0.8, 6])('counts a cycle of %d s', (cycleS) => {
    const set = simulateSet({ placement, level: 'typical', seed: 312, gyroscope, count: 10, cycleS });
    expect(detect(set.trace, placement, set.subject).raises.length).toBe(10);
  });

  test.each([1, 3])('counts %d raises that the floor stops', (count) => {
    const { raises, countHigh } = detectHeelRaises(droppedHeels(count), 'heel', {}, heelDefaults);
    expect([raises.length, countHigh]).toEqual([count, count]);
  });

  test('finds nothing in quiet standing', () => {
    const set = simulateSet({ placement, level: 'hard', seed: 313, gyroscope, count: 0 });
    const found = detect(set.trace, placement, set.subject);
    expect(found.raises).toEqual([]);
    expect(found.countHigh).toBe(0);
  });

  test('puts tops and heights where they are, in the order of time', () => {
    const set = simulateSet({ placement, level: 'typical', seed: 314, gyroscope, count: 15, cycleS: 2 });
    const { raises } = detect(set.trace, placement, set.subject);
    expect(raises.length).toBe(15);
    raises.forEach((raise, i) => {
      const truth = set.truth.repetitions[i];
      expect(Math.abs(raise.topS - truth.topS)).toBeLessThan(0.06);
      expect(Math.abs(raise.startS - truth.startS)).toBeLessThan(0.16);
      expect(Math.abs(raise.endS - truth.endS)).toBeLessThan(0.16);
      expect(Math.abs(raise.heightM - truth.heelHeightM)).toBeLessThan(gyroscope ? 0.006 : 0.009);
      expect(raise.startS).toBeLessThan(raise.topS);
      expect(raise.topS).toBeLessThan(raise.endS);
      expect(raise.probability).toBeGreaterThan(0.5);
      expect(raise.heightUM).toBeGreaterThan(0);
    });
  });

  test('gives the same at any time of day', () => {
    const set = simulateSet({ placement, level: 'field', seed: 315, gyroscope, count: 8, cycleS: 2 });
    const first = detect(set.trace, placement, set.subject).raises;
    const shifted = detect(
      changed(set.trace, (timeS) => timeS + 4096),
      placement,
      set.subject,
    ).raises;
    expect(shifted.length).toBe(first.length);
    shifted.forEach((raise, i) => {
      expect(Math.abs(raise.topS - 4096 - first[i].topS)).toBeLessThan(1e-3);
      expect(Math.abs(raise.heightM - first[i].heightM)).toBeLessThan(1e-4);
    });
  });

  test('gives the same when asked again', () => {
    const set = simulateSet({ placement, level: 'field', seed: 316, gyroscope });
    expect(detect(set.trace, placement, set.subject)).toEqual(detect(set.trace, placement, set.subject));
  });

  test('loses neither of two repetitions to a gap between them', () => {
    const set = simulateSet({ placement, level: 'typical', seed: 317, gyroscope, count: 10, cycleS: 2 });
    const { endS } = set.truth.repetitions[4];
    const broken = changed(
      set.trace,
      (timeS) => timeS,
      (timeS) => timeS < endS - 0.3 || timeS > endS + 0.3,
    );
    expect(detect(broken, placement, set.subject).raises.length).toBe(10);
  });

  test('says when a top lies inside a gap', () => {
    const set = simulateSet({ placement, level: 'typical', seed: 318, gyroscope, count: 10, cycleS: 2.4 });
    const { topS } = set.truth.repetitions[5];
    const broken = changed(
      set.trace,
      (timeS) => timeS,
      (timeS) => Math.abs(timeS - topS) > 0.2,
    );
    const found = detect(broken, placement, set.subject);
    expect(found.raises.length).toBe(10);
    expect(found.raises.filter((raise) => raise.topInGap).length).toBe(1);
    expect(found.raises[5].longestGapS).toBeGreaterThan(0.38);
    expect(Number.isNaN(found.motion.heightM[Math.round((topS - found.motion.startS) * 100)])).toBe(true);
  });

  test('lists nothing in twenty seconds without samples, and says how many may have been missed', () => {
    const set = simulateSet({ placement, level: 'typical', seed: 6, gyroscope, count: 26, cycleS: 2 });
    const lost = { fromS: set.truth.repetitions[9].endS, toS: set.truth.repetitions[9].endS + 20 };
    const broken = changed(
      set.trace,
      (timeS) => timeS,
      (timeS) => timeS < lost.fromS || timeS > lost.toS,
    );
    const found = detect(broken, placement, set.subject);
    expect(found.raises.filter(({ topS }) => topS > lost.fromS && topS < lost.toS)).toEqual([]);
    expect(found.countLow).toBeLessThanOrEqual(found.raises.length);
    expect(found.countHigh).toBeGreaterThanOrEqual(26);
    const gap = found.issues.find(({ code }) => code === 'gap')!;
    expect(Math.hypot(gap.fromS - lost.fromS, gap.toS - lost.toS)).toBeLessThan(0.1);
  });

  test('copes with a recording that begins and ends in the midst of the set', () => {
    const set = simulateSet({ placement, level: 'typical', seed: 319, gyroscope, count: 12, cycleS: 2 });
    const [from, to] = [set.truth.repetitions[2].endS, set.truth.repetitions[9].startS];
    const part = changed(
      set.trace,
      (timeS) => timeS,
      // less than half a second of the rest on either side is left: no stance
      (timeS) => timeS > from + 0.1 && timeS < to - 0.1,
    );
    const found = detect(part, placement, set.subject);
    expect(found.raises.length).toBe(6);
    expect(found.issues.some((issue) => issue.code === 'no-quiet-stance') || found.stance === undefined).toBe(true);
  });
});

describe('foot', () => {
  test('gives the same in any mounting', () => {
    const set = simulateSet({ placement: 'foot', level: 'typical', seed: 321, count: 6, cycleS: 2 });
    const first = detect(set.trace, 'foot', set.subject).raises;
    const angle = fc.double({ min: -3.1, max: 3.1, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, (a, b, c) => {
        const turned = detect(rotated(set.trace, a, b, c), 'foot', set.subject).raises;
        expect(turned.length).toBe(first.length);
        turned.forEach((raise, i) => {
          expect(Math.abs(raise.topS - first[i].topS)).toBeLessThan(1e-3);
          expect(Math.abs(raise.heightM - first[i].heightM)).toBeLessThan(1e-4);
        });
      }),
      { seed: 41, numRuns: 8 },
    );
  });

  test('marks heights that stand on an assumed lever', () => {
    const set = simulateSet({ placement: 'foot', level: 'clean', seed: 322, count: 5 });
    const found = detectHeelRaises(set.trace, 'foot', {}, heelDefaults);
    expect(found.leverAssumed).toBe(true);
    expect(found.raises.length).toBe(5);
    expect(detect(set.trace, 'foot', set.subject).leverAssumed).toBeUndefined();
  });

  test.each([true, false])('finds no raise in walking or squats, gyroscope %s', (gyroscope) => {
    for (const activity of ['walking', 'squats'] as const) {
      for (let seed = 331; seed <= 336; seed++) {
        const set = simulateSet({ placement: 'foot', level: 'typical', seed, gyroscope, activity, count: 0 });
        expect([activity, seed, detect(set.trace, 'foot', set.subject).raises.length]).toEqual([activity, seed, 0]);
      }
    }
  });

  test('reports a sensor that slipped', () => {
    const faults = { slipChance: 1, slipRad: 0.1 };
    const set = simulateSet({ placement: 'foot', level: 'typical', seed: 341, count: 15, cycleS: 2, faults });
    const found = detect(set.trace, 'foot', set.subject);
    expect(found.raises.length).toBe(15);
    expect(found.issues.map((issue) => issue.code)).toContain('sensor-moved');
    found.raises.forEach((raise, i) => {
      expect(Math.abs(raise.heightM - set.truth.repetitions[i].heelHeightM)).toBeLessThan(0.01);
    });
  });
});

/** The trace as a sensor turned by three Euler angles would have recorded it. */
function rotated(trace: SimulatedTrace, a: number, b: number, c: number): SimulatedTrace {
  const turn = (x: number, y: number, angle: number): [number, number] => [
    x * Math.cos(angle) - y * Math.sin(angle),
    x * Math.sin(angle) + y * Math.cos(angle),
  ];
  return {
    groups: trace.groups.map(({ timesS, channels }) => {
      const out = channels.map((channel) => ({ ...channel, samples: Float64Array.from(channel.samples) }));
      for (let k = 0; k < out.length; k += 3) {
        for (let i = 0; i < timesS.length; i++) {
          let [x, y, z] = [out[k].samples[i], out[k + 1].samples[i], out[k + 2].samples[i]];
          [x, y] = turn(x, y, a);
          [y, z] = turn(y, z, b);
          [x, y] = turn(x, y, c);
          out[k].samples[i] = x;
          out[k + 1].samples[i] = y;
          out[k + 2].samples[i] = z;
        }
      }
      return { timesS, channels: out };
    }),
  };
}

test('three quick bumps that may be steps stand or fall together: the range holds all three', () => {
  const bumps = [0, 0.5, 1].map((later) => [4 + later, 0.5, 0.06] as const);
  const { raises, countLow, countHigh } = detectHeelRaises(humps(bumps), 'heel', {}, heelDefaults);
  expect([raises.length, countLow, countHigh]).toEqual([0, 0, 3]);
});

test('a raise alone is one; beside strides it may be the first step', () => {
  const bounds = (level: Level, seed: number): number[] => {
    const set = simulateSet({ placement: 'foot', level, seed, count: 1, cycleS: 2 });
    const { raises, countLow, countHigh } = detect(set.trace, 'foot', set.subject);
    return [raises.length, countLow, countHigh];
  };
  expect(bounds('typical', 2)).toEqual([1, 1, 1]);
  // five strides before it; the field without strides
  expect(bounds('field', 3)).toEqual([1, 0, 1]);
  expect(bounds('field', 5)).toEqual([1, 1, 1]);
});
