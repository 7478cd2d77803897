import { wayGone } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { readReference } from '../support/fixture.ts';
import { pooledP95, topLimitS } from './modules.ts';

interface Case {
  readonly placement: 'heel' | 'trunk';
  readonly riseS: number;
  readonly holdS: number;
  readonly fallS: number;
  readonly topM: number;
  readonly beforeM: number;
  readonly afterM: number;
  readonly sway: number;
  readonly cornerHz: number;
  readonly white: number;
  readonly tempoSpread: number;
  readonly partSpread: number;
  readonly heightSpread: number;
}

const smooth = { kind: 'minimum-jerk', skew: 0, share: 0 } as const;

/** The case as a simulated set would hold it, with its one repetition. */
function limitOf(one: Case, startS = 3): number {
  const { placement, riseS, holdS, fallS, sway, cornerHz, white } = one;
  const faults = {
    swayHeelM: sway,
    swayCornerHz: cornerHz,
    stringNoiseM: white,
    trunkWobble: sway,
    wobbleCornerHz: cornerHz,
    accelerometerNoise: white,
    tempoSpread: one.tempoSpread,
    partSpread: one.partSpread,
    heightSpread: one.heightSpread,
  };
  const set = { truth: { person: { upShape: smooth, downShape: smooth, bodyMassKg: 70 } }, faults };
  const repetition = {
    startS,
    highFromS: startS + riseS,
    highToS: startS + riseS + holdS,
    endS: startS + riseS + holdS + fallS,
    heelHeightM: one.topM,
    bodyRiseM: one.topM,
    lowBeforeM: one.beforeM,
    lowAfterM: one.afterM,
  };
  return topLimitS(placement, set, repetition, wayGone);
}

describe('the least error of a top', () => {
  const reference = readReference<Case[], number[]>('top-limit.deviations');

  test.each(reference.input.map((one, index) => ({ one, expected: reference.expected[index] })))(
    '$one.placement, $one.riseS s up, $one.holdS s held: as by dense matrices in NumPy',
    ({ one, expected }) => {
      expect(Math.abs(limitOf(one) / expected - 1)).toBeLessThan(reference.rtol);
    },
  );

  test('is the same at any time of the recording, and grows with the noise', () => {
    for (const one of reference.input) {
      expect(limitOf(one, 40)).toBeCloseTo(limitOf(one), 8);
      expect(limitOf({ ...one, sway: 2 * one.sway })).toBeGreaterThan(limitOf(one));
    }
  });

  test('95 % of normal errors of one size lie within 1.96 of it', () => {
    expect(pooledP95([0.01, 0.01])).toBeCloseTo(0.0196, 4);
  });
});
