import { describe, expect, test } from 'vitest';
import { evenNear, regularBeat } from '../../../packages/analysis/src/efforts/regular-beat.ts';
import { madeNoise } from '../../support/made-pull.ts';

const evenAt = (rateHz: number, count: number) => Float64Array.from({ length: count }, (_, i) => 3.7 + i / rateHz);

/** Stamps off their beat by a share of it, 0.45 beats at most. */
function jittered(evenS: Float64Array, rateHz: number, share: number, seed = 5): Float64Array {
  const noise = madeNoise(seed, share);
  return evenS.map((timeS) => timeS + Math.max(-0.45, Math.min(0.45, noise())) / rateHz);
}

function farthest(one: Float64Array, other: Float64Array): number {
  return one.reduce((most, value, i) => Math.max(most, Math.abs(value - other[i])), 0);
}

describe('stamps back on their beat', () => {
  test.each([
    [80, 0.1],
    [80, 0.2],
    [200, 0.2],
    [1000, 0.2],
  ])('%d Hz, off by %d of a beat: to a tenth of a beat, whatever the first guess of the rate', (rateHz, share) => {
    const evenS = evenAt(rateHz, 440);
    for (const guess of [1, 0.998, 1.002]) {
      for (const seed of [5, 6, 7]) {
        const beat = regularBeat(jittered(evenS, rateHz, share, seed), guess * rateHz)!;
        expect(farthest(beat.timesS, evenS)).toBeLessThan(0.1 / rateHz);
        expect(Math.abs(beat.jitterS * rateHz - share)).toBeLessThan(0.15 * share);
      }
    }
  });

  test('lost packets leave the others in their places', () => {
    const evenS = evenAt(80, 440).filter((_, i) => (i < 100 || i >= 112) && (i < 230 || i >= 240));
    expect(farthest(regularBeat(jittered(evenS, 80, 0.2), 80)!.timesS, evenS)).toBeLessThan(0.1 / 80);
  });

  test('even stamps stay where they are', () => {
    const evenS = evenAt(200, 100);
    const beat = regularBeat(evenS, 200)!;
    expect(farthest(beat.timesS, evenS)).toBeLessThan(1e-9);
    expect(beat.jitterS).toBeLessThan(1e-9);
  });

  test('stamps that keep no beat are not put on one, nor are too few', () => {
    const noise = madeNoise(3, 1);
    let timeS = 0;
    const wild = Float64Array.from({ length: 300 }, () => (timeS += Math.abs(noise()) / 80 + 1e-4));
    expect(regularBeat(wild, 80)).toBeNull();
    expect(regularBeat(evenAt(80, 7), 80)).toBeNull();
    // where two stamps fall onto one beat, places are not sure
    expect(regularBeat(jittered(evenAt(80, 440), 80, 0.45), 80)).toBeNull();
  });
});

test('near a stretch the times are those of the beat, elsewhere the stamps', () => {
  const evenS = evenAt(80, 1200);
  const stamps = jittered(evenS, 80, 0.2);
  const times = evenNear(stamps, { fromS: evenS[600], toS: evenS[640] }, 80)!;
  expect(farthest(times.slice(600, 640), evenS.slice(600, 640))).toBeLessThan(0.1 / 80);
  expect(farthest(times.slice(0, 390), stamps.slice(0, 390))).toBe(0);
  expect(times).toHaveLength(1200);
});
