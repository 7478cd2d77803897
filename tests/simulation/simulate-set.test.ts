import type { Trace } from '@surae/analysis';
import type { Level, SetRequest, SimulatedPlacement } from '@surae/simulation';
import { simulateSet } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { inRun } from '../support/runs.ts';

const placements: SimulatedPlacement[] = ['heel', 'foot', 'trunk', 'platform'];
const levels: Level[] = ['clean', 'typical', 'hard', 'field', 'free'];
const cells = placements.flatMap((placement) => levels.map((level) => ({ placement, level })));
const even = { fatigueLoss: 0, heightSpread: 0, tempoSpread: 0, partSpread: 0, pivotMigration: 0 };

describe('a simulated set', () => {
  test.each(cells)(
    '$placement, $level: finite numbers at rising times, as many as the times',
    ({ placement, level }) => {
      for (let seed = 1; seed <= inRun(1, 3); seed++) {
        const trace: Trace = simulateSet({ placement, level, seed }).trace;
        for (const { timesS, channels } of trace.groups) {
          expect(timesS.findIndex((timeS, i) => i > 0 && !(timeS > timesS[i - 1]))).toBe(-1);
          for (const { samples } of channels) {
            expect(samples).toHaveLength(timesS.length);
            expect(samples.every(Number.isFinite)).toBe(true);
          }
        }
      }
    },
  );

  test.each(cells)(
    '$placement, $level: the same seed gives the same bytes, another seed others',
    ({ placement, level }) => {
      const [first, again, other] = [5, 5, 6].map((seed) => simulateSet({ placement, level, seed }));
      expect(again).toEqual(first);
      expect(other.trace).not.toEqual(first.trace);
    },
  );

  test('has the channels of its placement', () => {
    const quantities = (request: Omit<SetRequest, 'level' | 'seed'>): string[] =>
      simulateSet({ level: 'clean', seed: 1, ...request }).trace.groups.flatMap(({ channels }) =>
        channels.map(({ quantity, axis }) => `${quantity}${axis ?? ''}`),
      );
    const acceleration = ['accelerationx', 'accelerationy', 'accelerationz'];
    expect(quantities({ placement: 'heel' })).toEqual(['heel-height']);
    expect(quantities({ placement: 'platform' })).toEqual(['force']);
    expect(quantities({ placement: 'trunk' })).toEqual(acceleration);
    expect(quantities({ placement: 'foot', gyroscope: false })).toEqual(acceleration);
    expect(quantities({ placement: 'foot' })).toEqual([
      ...acceleration,
      'angular-velocityx',
      'angular-velocityy',
      'angular-velocityz',
    ]);
  });

  test('the gyroscope changes neither the acceleration nor the truth', () => {
    const request = { placement: 'foot', level: 'hard', seed: 9 } as const;
    const [withGyroscope, without] = [simulateSet(request), simulateSet({ ...request, gyroscope: false })];
    expect(without.truth).toEqual(withGyroscope.truth);
    expect(without.trace.groups[0].channels[0]).toEqual(withGyroscope.trace.groups[0].channels[0]);
  });

  test('takes count, tempo and amounts that are fixed', () => {
    const set = simulateSet({
      placement: 'heel',
      level: 'typical',
      seed: 3,
      count: 7,
      cycleS: 4,
      faults: { swayHeelM: 0.001 },
    });
    expect(set.truth.repetitions).toHaveLength(7);
    expect(set.truth.person.cycleS).toBe(4);
    expect(set.faults.swayHeelM).toBe(0.001);
  });

  test('a lever that is fixed makes the whole foot as much longer, and heights grow with it', () => {
    const request = { placement: 'foot', level: 'clean', seed: 3, count: 4, faults: even } as const;
    const drawn = simulateSet(request).truth;
    const heelLeverM = 2 * drawn.person.foot.heelLeverM;
    const { person, repetitions } = simulateSet({ ...request, heelLeverM }).truth;
    expect(person.foot).toEqual({ ...drawn.person.foot, heelLeverM, ankleLeverM: 2 * drawn.person.foot.ankleLeverM });
    repetitions.forEach((one, i) =>
      expect(Math.abs(one.heelHeightM / drawn.repetitions[i].heelHeightM - 2)).toBeLessThan(1e-12),
    );
  });

  test('who moves quickly wobbles more, unless the wobble is fixed', () => {
    const request = { placement: 'trunk', level: 'hard', seed: 3, count: 2, faults: { wobblePace: 1 } } as const;
    const wobble = (cycleS: number): number => simulateSet({ ...request, cycleS }).faults.trunkWobble;
    expect(Math.abs(wobble(1) / wobble(4) - 4)).toBeLessThan(1e-12);
    const fixed = simulateSet({ ...request, cycleS: 1, faults: { trunkWobble: 0.1 } });
    expect(fixed.faults.trunkWobble).toBe(0.1);
  });

  test('80 kg lifted by 10 cm at the heel 25 times are 1961.33 J by the heel convention', () => {
    const { foot } = simulateSet({ placement: 'heel', level: 'clean', seed: 1 }).truth.person;
    const topPitchRad = Math.asin(0.1 / foot.heelLeverM);
    const { truth } = simulateSet({
      placement: 'heel',
      level: 'clean',
      seed: 1,
      count: 25,
      cycleS: 2,
      person: { bodyMassKg: 80, topPitchRad },
      faults: even,
    });
    const work = truth.repetitions.reduce((sum, { heelHeightM }) => sum + 80 * 9.80665 * heelHeightM, 0);
    expect(Math.round(100 * work) / 100).toBe(1961.33);
  });

  test('the tester misses the lever by somewhat less than one percent', () => {
    const count = inRun(120, 300);
    const errors = Array.from({ length: count }, (_, seed) => {
      const { subject, truth } = simulateSet({ placement: 'heel', level: 'typical', seed, count: 1 });
      return subject.heelLeverM / truth.person.foot.heelLeverM - 1;
    });
    const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / count);
    expect(Math.abs(rms - 0.0076)).toBeLessThan(0.0012); // cut at two and a half deviations
  });
});

describe('files without a repetition', () => {
  test.each(['quiet', 'squats', 'walking'] as const)('%s', (activity) => {
    for (const placement of placements) {
      const { truth, trace } = simulateSet({ placement, level: 'typical', seed: 2, activity });
      expect(truth.repetitions).toEqual([]);
      expect(trace.groups[0].timesS.length).toBeGreaterThan(200);
    }
  });

  test('squats move the trunk and the platform, walking moves the foot', () => {
    const spread = (request: SetRequest): number => {
      const { timesS, channels } = simulateSet(request).trace.groups[0];
      const sizes = timesS.map((_, i) => Math.hypot(...channels.map(({ samples }) => samples[i])));
      return Math.max(...sizes) - Math.min(...sizes);
    };
    const still = { level: 'clean', seed: 2 } as const;
    for (const [placement, activity] of [
      ['trunk', 'squats'],
      ['platform', 'squats'],
      ['foot', 'walking'],
    ] as const) {
      expect(spread({ ...still, placement, activity })).toBeGreaterThan(
        5 * spread({ ...still, placement, activity: 'quiet' }),
      );
    }
    const foot = { ...still, placement: 'foot', gyroscope: false } as const;
    expect(spread({ ...foot, activity: 'squats' })).toBeLessThan(2 * spread({ ...foot, activity: 'quiet' }));
  });

  test('about one field recording in twenty is empty', () => {
    let empty = 0;
    const sets = inRun(60, 120);
    for (let seed = 1; seed <= sets; seed++) {
      if (simulateSet({ placement: 'heel', level: 'field', seed }).truth.repetitions.length === 0) empty += 1;
    }
    expect(empty).toBeGreaterThan(inRun(0, 1));
    expect(empty).toBeLessThan(sets / 8);
  });
});

describe('signal-to-noise ratio of single repetitions', () => {
  // repetitions of one person are alike: the median of sixteen sets scatters more than that of forty
  const [most, fewestBelow] = inRun([8, 0.05], [7, 0.13]);
  const pooled = (placement: SimulatedPlacement, level: Level): number[] => {
    const all: number[] = [];
    for (let seed = 1; seed <= inRun(16, 40); seed++) {
      for (const { signalToNoise } of simulateSet({ placement, level, seed }).truth.repetitions)
        all.push(signalToNoise!);
    }
    return all.sort((a, b) => a - b);
  };

  test.each(['trunk', 'platform'] as const)(
    '%s: typical 15 and more, hard and field 5 to 7 with a fifth under 4',
    (placement) => {
      const typical = pooled(placement, 'typical');
      expect(typical[Math.floor(typical.length / 2)]).toBeGreaterThan(15);
      for (const level of ['hard', 'field'] as const) {
        const values = pooled(placement, level);
        const median = values[Math.floor(values.length / 2)];
        expect(median).toBeGreaterThan(5);
        expect(median).toBeLessThan(most);
        const below = values.filter((value) => value < 4).length / values.length;
        expect(below).toBeGreaterThan(fewestBelow);
        expect(below).toBeLessThan(0.32);
      }
    },
  );

  test('heel and foot have none', () => {
    for (const placement of ['heel', 'foot'] as const) {
      const { truth } = simulateSet({ placement, level: 'hard', seed: 1 });
      expect(truth.medianSignalToNoise).toBeUndefined();
    }
  });
});
