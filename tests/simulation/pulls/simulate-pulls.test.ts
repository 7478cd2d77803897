import type { Trace } from '@surae/analysis';
import { type Level, simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';

const levels: Level[] = ['clean', 'typical', 'hard', 'field'];
const silent = { noiseN: 0, yielding: 0, restLoadN: 0 };

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
        [0.3, 0.5].forEach((share, k) => {
          const over = part.findIndex((value) => value >= share * effort.peakN);
          expect(Math.abs(timesS[from + over] - effort.onsetS - effort.reachedS[k])).toBeLessThan(0.0015);
        });
        const area = part.subarray(0, 200).reduce((sum, value) => sum + value, 0) / 1000;
        // the sum begins and ends within a millisecond of the window
        expect(Math.abs(area - effort.earlyImpulseNs)).toBeLessThan(0.002 * effort.risenN[3] + 0.01);
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
});
