import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { judged } from '../../support/detected-set.ts';
import { parametersWith } from '../../support/set-under-judgement.ts';

test('the beat error is the period minus the beat; the first has none, and without a beat nobody has', () => {
  const report = judged({ heightsM: [0.1, 0.1], rests: { 0: 0.3 } });
  expect(report.repetitions[0].beatErrorS).toBeNull();
  expect(report.repetitions[1].beatErrorS).toBeCloseTo(0.3, 12);
  const free = judged(
    { heightsM: [0.1, 0.1] },
    { protocol: { ...FLOOR, parameters: parametersWith({ cue: 'none' }) } },
  );
  expect(free.repetitions[1].beatErrorS).toBeNull();
});

test('a bottom below the level of rest is a depth, one above is none', () => {
  const report = judged({ heightsM: [0.1, 0.1], raises: { 0: { lowAfterM: -0.03 }, 1: { lowAfterM: 0.004 } } });
  expect(report.repetitions[0].depthM).toBe(0.03);
  expect(report.repetitions[1].depthM).toBe(0);
});

test('the percentage of the reference carries the doubt of both', () => {
  const report = judged({ heightsM: [0.1, 0.1, 0.08], uM: 0.002 });
  const third = report.repetitions[2];
  expect(third.percentOfReference).toBeCloseTo(80, 9);
  // 2 mm of height, and 80 % of 2 mm / sqrt 2 of the reference, over 10 cm
  expect(third.percentOfReferenceU).toBeCloseTo(100 * Math.hypot(0.02, 0.8 * (0.02 / Math.SQRT2)), 9);
});

test('mean power is the work over the time up, peak power is larger', () => {
  const { repetitions } = judged({ heightsM: Array<number>(5).fill(0.1) }, { subject: { bodyMassKg: 80 } });
  const third = repetitions[2];
  expect(third.meanPowerW).toBeCloseTo((third.work.heelJ ?? 0) / (third.upS ?? Number.NaN), 9);
  expect(third.peakPowerW ?? 0).toBeGreaterThan(third.meanPowerW ?? Number.POSITIVE_INFINITY);
});

test('a top in a gap has no height, no percentage and no verdict', () => {
  const hidden = judged({ heightsM: [0.1, 0.1], raises: { 1: { topInGap: true, longestGapS: 0.5 } } }).repetitions[1];
  expect(hidden).toMatchObject({
    heightM: null,
    percentOfReference: null,
    valid: 'cannot_tell',
    probabilityValid: null,
  });
});
