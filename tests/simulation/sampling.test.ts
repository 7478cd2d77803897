import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../packages/simulation/src/fault-draw.ts';
import { faultTable } from '../../packages/simulation/src/fault-table.ts';
import { Random } from '../../packages/simulation/src/random.ts';
import { addSpikes, addWhite, convert, drawSampleTimes } from '../../packages/simulation/src/sampling.ts';

const still = drawFaults(faultTable, 'clean', new Random(1, 0), {});

describe('sample times', () => {
  test('are regular when nothing disturbs them', () => {
    const { trueS, stampS } = drawSampleTimes(2, 100, still, new Random(1, 0));
    expect(trueS).toEqual(Float64Array.from({ length: 200 }, (_, i) => i / 100));
    expect(stampS).toEqual(trueS);
  });

  test('rise strictly under the worst jitter', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { trueS, stampS } = drawSampleTimes(5, 100, { ...still, stampJitter: 1 }, new Random(seed, 0));
      for (let i = 1; i < stampS.length; i++) {
        expect(stampS[i]).toBeGreaterThan(stampS[i - 1]);
        expect(trueS[i]).toBeGreaterThan(trueS[i - 1]);
      }
    }
  });

  test('miss the share that is lost', () => {
    let kept = 0;
    for (let seed = 0; seed < 100; seed++) {
      kept += drawSampleTimes(20, 100, { ...still, lossShare: 0.1 }, new Random(seed, 0)).stampS.length;
    }
    expect(Math.abs(kept / 200_000 - 0.9)).toBeLessThan(0.006);
  });

  test('hold as many gaps of a third of a second or more as asked', () => {
    const { stampS } = drawSampleTimes(60, 100, { ...still, gapCount: 1 }, new Random(3, 0));
    const gaps = stampS.slice(1).filter((timeS, i) => timeS - stampS[i] > 0.25);
    expect(gaps).toHaveLength(1);
  });
});

describe('the converter', () => {
  test('rounds to its steps and stops at its range', () => {
    const samples = Float64Array.of(-3, -0.9, 0.1, 0.13, 0.9, 7);
    convert(samples, -1, 1, 3);
    expect([...samples]).toEqual([-1, -1, 0, 0.25, 0.75, 0.75]);
  });

  test('twelve bits over 4 g each way are steps of 19 mm/s2', () => {
    const samples = Float64Array.of(0, 0.0095, 0.0097);
    convert(samples, -39.2266, 39.2266, 12);
    expect([...samples].map((value) => Math.round(value * 1e4) / 1e4)).toEqual([0, 0, 0.0192]);
  });
});

describe('noise and spikes', () => {
  test('white noise has the given spread', () => {
    const samples = new Float64Array(40_000);
    addWhite(samples, 0.5, new Random(2, 0));
    const variance = samples.reduce((sum, value) => sum + value * value, 0) / 40_000;
    expect(Math.abs(variance / 0.25 - 1)).toBeLessThan(4 * Math.sqrt(2 / 40_000));
  });

  test('spikes hit single samples as often as asked', () => {
    const timesS = Float64Array.from({ length: 6001 }, (_, i) => i / 100);
    const samples = new Float64Array(6001);
    addSpikes([samples], timesS, 5, 10, new Random(2, 0));
    const hit = samples.filter((value) => value !== 0);
    expect(hit).toHaveLength(5);
    for (const value of hit) expect(Math.abs(value)).toBeGreaterThanOrEqual(3);
  });
});
