import {
  BlockCounter,
  type ChannelGroup,
  counterInput,
  type ProvisionalRaise,
  type SensedPlacement,
  blockCounterDefaults as settings,
} from '@surae/analysis';
import { simulateSet } from '@surae/simulation';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryBlockSizes } from '../../support/arbitraries.ts';
import { cutIntoBlocks, heelRecording } from '../../support/blocks.ts';
import '../../support/close.ts';
import { isLong, runs } from '../../support/runs.ts';

function countAll(
  placement: SensedPlacement,
  blocks: readonly ChannelGroup[],
  heelLeverM?: number,
): ProvisionalRaise[] {
  const counter = new BlockCounter(placement, { settings, ...(heelLeverM === undefined ? {} : { heelLeverM }) });
  return [...blocks.flatMap((block) => counter.push(block)), ...counter.finish()];
}

describe('sets whose answer is known', () => {
  test('25 raises of 10 cm in 2 s each after a second of standing', () => {
    const heightAt = (timeS: number): number =>
      timeS < 1 || timeS > 51 ? 0 : 0.05 * (1 - Math.cos(Math.PI * (timeS - 1)));
    for (const rateHz of [10, 50, 333, 1000]) {
      const raises = countAll('heel', [heelRecording(heightAt, 52, rateHz)]);
      expect(raises.length).toBe(25);
      const tops = raises.map(({ topS }) => topS);
      expect(tops).toBeCloseToEach(
        tops.map((_, k) => 2 + 2 * k),
        // the middle of three samples and the filter are all there is: a third of a sample at 10 Hz
        { rtol: 0, atol: 0.03 },
      );
      // at 10 Hz the highest of three is the middle one, which costs a few millimetres
      expect(raises.map(({ heightM }) => heightM)).toBeCloseToEach(new Array<number>(25).fill(0.1), {
        rtol: 0,
        atol: 0.006,
      });
    }
  });

  test('a fading set: 25 raises from 10 cm down to 5.2 cm', () => {
    const heightAt = (timeS: number): number => {
      const k = Math.floor((timeS - 1) / 2);
      return k < 0 || k > 24 ? 0 : 0.05 * (1 - 0.02 * k) * (1 - Math.cos(Math.PI * (timeS - 1)));
    };
    const raises = countAll('heel', [heelRecording(heightAt, 53, 100)]);
    expect(raises.length).toBe(25);
    const sumM = raises.reduce((sum, { heightM }) => sum + heightM, 0);
    expect([sumM]).toBeCloseToEach([1.9], { rtol: 0.02, atol: 0 });
  });

  test('standing still, and a platform with nobody on it, hold no repetition', () => {
    expect(countAll('heel', [heelRecording(() => 0.03, 20, 100)])).toEqual([]);
    const timesS = Float64Array.from({ length: 2000 }, (_, i) => i / 100);
    const empty: ChannelGroup = {
      timesS,
      channels: [{ quantity: 'force', axis: null, samples: timesS.map(() => 1.5) }],
    };
    expect(countAll('platform', [empty])).toEqual([]);
  });

  test('a gap of half a second between two repetitions loses neither', () => {
    const whole = heelRecording((timeS) => 0.05 * (1 - Math.cos(Math.PI * timeS)), 20, 100);
    const keep = Array.from(whole.timesS.keys()).filter((i) => i < 580 || i > 630);
    const gapped: ChannelGroup = {
      timesS: Float64Array.from(keep, (i) => whole.timesS[i]),
      channels: whole.channels.map((channel) => ({
        ...channel,
        samples: Float64Array.from(keep, (i) => channel.samples[i]),
      })),
    };
    expect(countAll('heel', [gapped]).length).toBe(countAll('heel', [whole]).length);
  });
});

describe('the state between blocks', () => {
  test('shows phase, height and count while they change', () => {
    const recording = heelRecording((timeS) => (timeS < 1 ? 0 : 0.05 * (1 - Math.cos(Math.PI * (timeS - 1)))), 6, 100);
    const counter = new BlockCounter('heel', { settings });
    expect(counter.state).toEqual({ phase: 'waiting', timeS: undefined, heightM: 0, count: 0 });
    const blocks = cutIntoBlocks(recording, [5]);
    const seen = blocks.map((block) => {
      counter.push(block);
      return counter.state;
    });
    expect(seen[0].phase).toBe('settled-low');
    expect(new Set(seen.map(({ phase }) => phase))).toEqual(new Set(['settled-low', 'rising', 'high', 'lowering']));
    expect(seen.map(({ count }) => count)).toEqual(seen.map(({ count }) => count).toSorted((a, b) => a - b));
    expect(seen.at(-1)!.count).toBe(2);
    expect(Math.max(...seen.map(({ heightM }) => heightM))).toBeGreaterThan(0.09);
  });
});

describe('any split into blocks gives exactly the same repetitions', () => {
  test.each([
    ['heel', true],
    ['foot', true],
    ['foot', false],
    ['trunk', true],
    ['platform', true],
  ] as const)('%s, gyroscope %s', (placement, gyroscope) => {
    const recordings = [11, 12, 13].map((seed) => {
      const { trace } = simulateSet({ placement, level: 'hard', seed, gyroscope, count: 6 });
      const group = counterInput(trace, placement);
      return { group, whole: countAll(placement, [group]) };
    });
    expect(recordings.some(({ whole }) => whole.length >= 3)).toBe(true);
    fc.assert(
      fc.property(fc.constantFrom(...recordings), arbitraryBlockSizes, ({ group, whole }, sizes) => {
        expect(countAll(placement, cutIntoBlocks(group, sizes))).toEqual(whole);
      }),
      runs(15, 200),
    );
    // sample by sample, and with empty blocks in between
    const { group, whole } = recordings[0];
    const single = cutIntoBlocks(group, [1]);
    const empty = cutIntoBlocks({ timesS: group.timesS.slice(0, 1), channels: group.channels }, [1]).map((block) => ({
      timesS: block.timesS.slice(0, 0),
      channels: block.channels.map((channel) => ({ ...channel, samples: channel.samples.slice(0, 0) })),
    }));
    expect(countAll(placement, [...empty, ...single.flatMap((block) => [block, ...empty])])).toEqual(whole);
  });
});

describe('laws of the sensor', () => {
  test('a recording that starts at another time gives the same repetitions at another time', () => {
    const { trace } = simulateSet({ placement: 'foot', level: 'typical', seed: 21, count: 8 });
    const group = counterInput(trace, 'foot');
    const before = countAll('foot', [group]);
    // a power of two keeps the sums of times free of rounding of its own
    const after = countAll('foot', [{ ...group, timesS: group.timesS.map((timeS) => timeS + 64) }]);
    expect(after.length).toBe(before.length);
    expect(after.map(({ topS }) => topS)).toBeCloseToEach(
      before.map(({ topS }) => topS + 64),
      { rtol: 0, atol: 0.011 },
    );
  });

  test('any mounting of the sensor gives the same count on foot and trunk', () => {
    for (const placement of ['foot', 'trunk'] as const) {
      const { trace } = simulateSet({ placement, level: 'typical', seed: 22, count: 8 });
      const group = counterInput(trace, placement);
      const before = countAll(placement, [group]);
      fc.assert(
        fc.property(fc.tuple(...[0, 1, 2, 3].map(() => fc.integer({ min: -100, max: 100 }))), ([a, b, c, d]) => {
          fc.pre(a * a + b * b + c * c + d * d > 0);
          const turned = countAll(placement, [rotate(group, [a, b, c, d])]);
          expect(turned.length).toBe(before.length);
          // the middle of three samples is taken axis by axis, so noise falls a little differently, and a top that
          // is nearly flat may move within its hold
          const moved = turned.map(({ topS }, i) => Math.abs(topS - before[i].topS)).sort((p, q) => p - q);
          expect(moved[moved.length >> 1]).toBeLessThan(0.02);
          expect(moved.at(-1)).toBeLessThan(0.5);
        }),
        runs(8, 100),
      );
    }
  });
});

/** Turns every vector of a group by a quaternion of any length. */
function rotate(group: ChannelGroup, [w, x, y, z]: readonly number[]): ChannelGroup {
  const n = w * w + x * x + y * y + z * z;
  const rows = [
    [w * w + x * x - y * y - z * z, 2 * (x * y - w * z), 2 * (x * z + w * y)],
    [2 * (x * y + w * z), w * w - x * x + y * y - z * z, 2 * (y * z - w * x)],
    [2 * (x * z - w * y), 2 * (y * z + w * x), w * w - x * x - y * y + z * z],
  ];
  const axes = ['x', 'y', 'z'] as const;
  const channels = group.channels.map((channel) => {
    const row = rows[axes.indexOf(channel.axis as 'x' | 'y' | 'z')];
    const parts = axes.map(
      (axis) => group.channels.find((one) => one.quantity === channel.quantity && one.axis === axis)!,
    );
    return {
      ...channel,
      samples: channel.samples.map((_, i) => row.reduce((sum, r, k) => sum + (r / n) * parts[k].samples[i], 0)),
    };
  });
  return { ...group, channels };
}

describe('simulated sets, whose truth the counter does not know', () => {
  const seeds = Array.from({ length: isLong ? 120 : 6 }, (_, k) => 101 + k);

  test.each([
    // the least share of sets with the exact count; the final pass does better
    ['heel', 'clean', true, 0.95],
    ['heel', 'typical', true, 0.95],
    ['foot', 'clean', true, 0.95],
    ['foot', 'typical', true, 0.95],
    ['foot', 'clean', false, 0.9],
    ['foot', 'typical', false, 0.9],
    ['trunk', 'clean', true, 0.8],
    ['platform', 'clean', true, 0.8],
    ['trunk', 'typical', true, 0.4],
    ['platform', 'typical', true, 0.4],
  ] as const)('%s, %s, gyroscope %s: the exact count in at least %d of them', (placement, level, gyroscope, least) => {
    const exact = seeds.filter((seed) => {
      const { subject, trace, truth } = simulateSet({ placement, level, seed, gyroscope });
      const raises = countAll(placement, [counterInput(trace, placement)], subject.heelLeverM);
      return raises.length === truth.repetitions.length;
    });
    expect(exact.length / seeds.length).toBeGreaterThanOrEqual(least);
  });
});

test.each(['heel', 'foot', 'trunk', 'platform'] as const)(
  '%s: tops lie where they are, filters or not',
  (placement) => {
    const { subject, trace, truth } = simulateSet({ placement, level: 'clean', seed: 31, count: 12, cycleS: 2 });
    const raises = countAll(placement, [counterInput(trace, placement)], subject.heelLeverM);
    expect(raises.length).toBe(12);
    const off = raises.map(({ topS }, i) => topS - truth.repetitions[i].topS).sort((a, b) => a - b);
    // half of them within a twentieth of a second of the middle of the hold
    expect(Math.abs(off[6])).toBeLessThan(0.05);
  },
);

describe('refusals', () => {
  const recording = heelRecording(() => 0, 1, 100);

  test('a block without the channel of the placement', () => {
    expect(() => new BlockCounter('foot', { settings }).push(recording)).toThrow(
      expect.objectContaining({ code: 'missing-channel' }),
    );
  });

  test('a gyroscope that comes and goes', () => {
    const { trace } = simulateSet({ placement: 'foot', level: 'clean', seed: 1, count: 1 });
    const [first, second] = cutIntoBlocks(counterInput(trace, 'foot'), [100]);
    const counter = new BlockCounter('foot', { settings });
    counter.push(first);
    const without = { ...second, channels: second.channels.filter(({ quantity }) => quantity === 'acceleration') };
    expect(() => counter.push(without)).toThrow(expect.objectContaining({ code: 'missing-channel' }));
  });

  test('times that run back, within a block or from one to the next, and a NaN', () => {
    const counter = new BlockCounter('heel', { settings });
    counter.push(recording);
    expect(() => counter.push(recording)).toThrow(expect.objectContaining({ code: 'not-increasing' }));
    const [single] = cutIntoBlocks(recording, [1]);
    const oneByOne = new BlockCounter('heel', { settings });
    oneByOne.push(single);
    expect(() => oneByOne.push(single)).toThrow(expect.objectContaining({ code: 'not-increasing' }));
    const heel = (timesS: number[], samples: number[]): ChannelGroup => ({
      timesS: Float64Array.from(timesS),
      channels: [{ quantity: 'heel-height', axis: null, samples: Float64Array.from(samples) }],
    });
    expect(() => new BlockCounter('heel', { settings }).push(heel([0, 2, 1], [0, 0, 0]))).toThrow(
      expect.objectContaining({ code: 'not-increasing' }),
    );
    expect(() => new BlockCounter('heel', { settings }).push(heel([0, 1], [0, Number.NaN]))).toThrow(
      expect.objectContaining({ code: 'not-finite' }),
    );
    expect(() => new BlockCounter('heel', { settings }).push(heel([0, 1], [0]))).toThrow(
      expect.objectContaining({ code: 'length-mismatch' }),
    );
  });

  test('a block after the end; finish itself may be called again', () => {
    const counter = new BlockCounter('heel', { settings });
    counter.push(recording);
    expect(counter.finish()).toEqual([]);
    expect(counter.finish()).toEqual([]);
    expect(() => counter.push(recording)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
  });
});

test.each(['heel', 'foot', 'trunk', 'platform'] as const)(
  '%s: a hole hides what lies in it, and nothing after it',
  (placement) => {
    for (const [seed, lengthS] of [
      [1, 0.08],
      [2, 1],
      [3, 3],
      [4, 3],
      [1, 5],
      [2, 8],
    ]) {
      const { trace, truth } = simulateSet({ placement, level: 'clean', seed, count: 12 });
      const { timesS, channels } = counterInput(trace, placement);
      const fromS = truth.repetitions[5].startS + 0.4;
      const toS = fromS + lengthS;
      const kept = (values: Float64Array): Float64Array =>
        values.filter((_, i) => timesS[i] < fromS || timesS[i] > toS);
      const raises = countAll(placement, [
        {
          timesS: kept(timesS),
          channels: channels.map((channel) => ({ ...channel, samples: kept(channel.samples) })),
        },
      ]);
      const isHidden = ({ topS }: { topS: number }): boolean => topS > fromS && topS < toS;
      const hidden = truth.repetitions.filter(isHidden).length;
      expect([seed, lengthS, raises.filter((raise) => !isHidden(raise)).length]).toEqual([
        seed,
        lengthS,
        truth.repetitions.length - hidden,
      ]);
      expect(raises.filter(isHidden).length).toBeLessThanOrEqual(Math.min(1, hidden));
    }
  },
);
