import { expect, test } from 'vitest';
import { setTempo, tempoParts } from '../../../packages/analysis/src/raises/tempo.ts';
import { detectedSet } from '../../support/detected-set.ts';

test('the parts of a repetition and the time at the bottom add up to its cycle', () => {
  const { raises } = detectedSet({ heightsM: [0.1, 0.1, 0.1], rests: { 0: 0.5 } });
  const parts = tempoParts(raises);
  expect(parts[0].lowS).toBeCloseTo(0.5, 12);
  expect(parts[0].cycleS).toBeCloseTo(2.5, 12);
  for (const part of parts.slice(0, 2)) {
    expect(part.upS + part.topHoldS + part.downS + (part.lowS ?? Number.NaN)).toBeCloseTo(part.cycleS ?? 0, 12);
  }
  expect(parts[2].lowS).toBeUndefined();
  expect(parts[2].cycleS).toBeUndefined();
});

test('the period runs from top to top, its uncertainty from both tops', () => {
  const { raises } = detectedSet({ heightsM: [0.1, 0.1], rests: { 0: 0.5 }, timeUS: 0.03 });
  const parts = tempoParts(raises);
  expect(parts[0].periodS).toBeUndefined();
  expect(parts[1].periodS).toBeCloseTo(2.5, 12);
  expect(parts[1].periodUS).toBeCloseTo(0.03 * Math.SQRT2, 12);
});

test('sixty beats a minute, up on one and down on the next, are thirty repetitions a minute', () => {
  const { raises } = detectedSet({ heightsM: Array.from({ length: 25 }, () => 0.1) });
  const tempo = setTempo(tempoParts(raises), 2);
  expect(tempo.perMinute).toBeCloseTo(30, 9);
  expect(tempo.meanBeatErrorS).toBeCloseTo(0, 12);
  expect(tempo.driftS?.value).toBeCloseTo(0, 12);
});

test('a period that grows by 20 ms a repetition is a drift of 20 ms', () => {
  const { raises } = detectedSet({
    heightsM: Array(8).fill(0.1),
    rests: { 0: 0, 1: 0.02, 2: 0.04, 3: 0.06, 4: 0.08, 5: 0.1, 6: 0.12 },
  });
  const tempo = setTempo(tempoParts(raises), undefined);
  expect(tempo.driftS?.value).toBeCloseTo(0.02, 9);
  expect(tempo.driftS?.low).toBeGreaterThan(0);
  expect(tempo.meanBeatErrorS).toBeNull();
});

test('one repetition has no period and an empty set no tempo', () => {
  expect(setTempo(tempoParts(detectedSet({ heightsM: [0.1] }).raises), 2).perMinute).toBeNull();
  expect(setTempo([], 2)).toMatchObject({ meanPeriodS: null, meanUpS: null, driftS: null });
});
