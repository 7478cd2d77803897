import type { Trace } from '@surae/analysis';
import { formatFaultTable, type Level, pullTable, simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { drawEffort, type Effort, effortForce, releaseTime } from '../../../packages/simulation/src/pulls/effort.ts';
import { Random } from '../../../packages/simulation/src/random.ts';

const levels: Level[] = ['clean', 'typical', 'hard', 'field'];
const silent = { noiseN: 0, yielding: 0, restLoadN: 0 };

describe('one effort', () => {
  const exponential: Effort = {
    kind: 'fast',
    onsetS: 1,
    plateauN: 1000,
    riseS: 0.1,
    power: 1,
    holdS: 1,
    releaseS: 0.3,
  };

  // F = 1000 (1 - exp(-t / 0.1))
  test.each([
    [0.05, 393.469],
    [0.1, 632.121],
    [0.15, 776.87],
    [0.2, 864.665],
  ])('a fast effort with an exponential rise, %d s after its onset: %d N', (afterS, force) => {
    expect(Math.round(1000 * effortForce(exponential, 0, 1 + afterS)) / 1000).toBe(force);
  });

  test('is nothing before its onset and after its release', () => {
    for (const kind of ['ramp', 'fast'] as const) {
      const effort = drawEffort(kind, 2, 900, new Random(1, 0));
      const endS = releaseTime(effort) + effort.releaseS;
      expect([effortForce(effort, 0.1, 1.99), effortForce(effort, 0.1, endS + 0.01)]).toEqual([0, 0]);
      expect(Math.abs(effortForce(effort, 0, releaseTime(effort)) / 900 - 1)).toBeLessThan(0.02);
      expect(Math.abs(effortForce(effort, 0.1, releaseTime(effort)) / 900 - 0.9)).toBeLessThan(0.02);
    }
  });
});

describe('a recording of efforts', () => {
  test('the same seed gives the same bytes', () => {
    for (const level of levels) {
      const draw = (seed: number) => simulatePulls({ kind: 'fast', level, seed });
      expect(draw(4)).toEqual(draw(4));
      expect(draw(4).trace).not.toEqual(draw(5).trace);
    }
  });

  test('a perfect sensor reads the truth: peak, best half second and the rise after the onset', () => {
    for (const kind of ['ramp', 'fast'] as const) {
      const request = { kind, level: 'clean', seed: 8, sampleRateHz: 1000, faults: silent } as const;
      const { trace, truth } = simulatePulls(request);
      const typed: Trace = trace;
      const { timesS, channels } = typed.groups[0];
      const { samples } = channels[0];
      for (const effort of truth.efforts) {
        const from = timesS.findIndex((timeS) => timeS >= effort.onsetS);
        const to = timesS.findIndex((timeS) => timeS >= effort.endS);
        const part = samples.subarray(from, to);
        expect(Math.abs(Math.max(...part) - effort.peakN)).toBeLessThan(0.5);
        let best = 0;
        for (let i = 0; i + 500 <= part.length; i += 10) {
          best = Math.max(best, part.subarray(i, i + 500).reduce((sum, value) => sum + value, 0) / 500);
        }
        expect(Math.abs(best / effort.bestHalfSecondN - 1)).toBeLessThan(1e-3);
        const risen = timesS.findIndex((timeS) => timeS >= effort.onsetS + 0.2);
        expect(Math.abs(samples[risen] - effort.risenN[3])).toBeLessThan(8);
      }
    }
  });

  test('tremor makes the greatest force exceed the best half second', () => {
    const { truth } = simulatePulls({ kind: 'ramp', level: 'hard', seed: 2 });
    for (const { peakN, bestHalfSecondN } of truth.efforts) {
      expect(peakN / bestHalfSecondN).toBeGreaterThan(1.002);
      expect(peakN / bestHalfSecondN).toBeLessThan(1.08);
    }
  });

  test('knocks stand out from the noise where nothing is pressed', () => {
    const knocking = { ...silent, knocksPerMinute: 60, knockN: 150 };
    const request = { kind: 'ramp', level: 'clean', seed: 3, sampleRateHz: 1000 } as const;
    const { trace, truth } = simulatePulls({ ...request, faults: knocking });
    const { timesS, channels } = trace.groups[0];
    const resting = channels[0].samples.filter((_, i) =>
      truth.efforts.every(({ onsetS, endS }) => timesS[i] < onsetS - 2 || timesS[i] > endS + 0.1),
    );
    expect(Math.max(...resting.map(Math.abs))).toBeGreaterThan(100);
  });

  test('the table of its faults prints', () => {
    expect(formatFaultTable(pullTable).split('\n')).toHaveLength(Object.keys(pullTable).length + 2);
  });
});
