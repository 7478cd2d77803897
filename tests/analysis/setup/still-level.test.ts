import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { InputError } from '../../../packages/analysis/src/errors.ts';
import { stillLevel } from '../../../packages/analysis/src/setup/still-level.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.zero.level;

describe('the level of a still stretch', () => {
  test('a constant is its own level, without range, noise and uncertainty', () => {
    const still = stillLevel(stillRun({ seconds: 2, level: 7 }), rule)!;
    expect([still.level, still.range, still.noise, still.u]).toEqual([7, 0, 0, 0]);
    expect(still.spanS).toBeCloseTo(2, 9);
  });

  test('too short a stretch has none', () => {
    expect(stillLevel(stillRun({ seconds: 0.9 }), rule)).toBeNull();
  });

  test('a slope shows in the range: 2 N/s over 2 s, block middles 1.75 s apart', () => {
    const still = stillLevel(stillRun({ seconds: 2, slopePerS: 2 }), rule)!;
    expect(still.range).toBeGreaterThan(3.3);
    expect(still.range).toBeLessThan(4);
  });

  test('the step of the converter stands in the uncertainty: a step over root 12', () => {
    const { timesS, samples } = stillRun({ seconds: 10, level: 3, noise: 0.05 });
    const coarse = samples.map((value) => Math.round(value));
    // one sample shows the step
    coarse[0] = 4;
    expect(stillLevel({ timesS, samples: coarse }, rule)!.u).toBeGreaterThanOrEqual(1 / Math.sqrt(12));
  });

  test('the hole between two samples is told', () => {
    const { timesS, samples } = stillRun({ seconds: 4 });
    const kept = [...timesS.keys()].filter((i) => timesS[i] < 1 || timesS[i] > 1.6);
    const part = {
      timesS: timesS.filter((_, i) => kept.includes(i)),
      samples: samples.filter((_, i) => kept.includes(i)),
    };
    expect(stillLevel(part, rule)!.longestGapS).toBeCloseTo(0.62, 1);
  });

  test('the uncertainty covers: 400 levels of white noise, 95 % of the true ones within 2.36 of it (t, 7 degrees)', () => {
    let within = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const { level, u } = stillLevel(stillRun({ seconds: 2.02, level: 5, noise: 2, seed }), rule)!;
      if (Math.abs(level - 5) <= 2.36 * u) within++;
    }
    expect(within / 400).toBeGreaterThan(0.92);
    expect(within / 400).toBeLessThan(0.98);
  });

  test('samples that are none are refused', () => {
    const run = stillRun({ seconds: 2 });
    expect(() => stillLevel({ ...run, samples: run.samples.map(() => NaN) }, rule)).toThrow(InputError);
    expect(() => stillLevel({ timesS: run.timesS.toReversed(), samples: run.samples }, rule)).toThrow(InputError);
  });
});
