import { effortDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';

const { pull, measure, onset, signal } = effortDefaults;

test('windows of the rate of rise and their least sampling rates go together', () => {
  expect(measure.rateLeastHz).toHaveLength(measure.rateWindowsS.length);
  expect(measure.rateWindowsS).toEqual([...measure.rateWindowsS].sort((a, b) => a - b));
  // a shorter window never asks for a lower rate
  expect(measure.rateLeastHz).toEqual([...measure.rateLeastHz].sort((a, b) => b - a));
});

test('a knock that the running median takes out is too short for an effort', () => {
  expect(pull.medianS / 2).toBeLessThan(pull.leastS);
});

test('a least pull in N.m is that in N on a lever of 10 cm', () => {
  expect(pull.leastNm).toBeCloseTo(pull.leastN / 10, 12);
  expect(signal.mostNm).toBeCloseTo(signal.mostN / 10, 12);
  expect(signal.restSpreadNm).toBeCloseTo(signal.restSpreadN / 10, 12);
});

test('shares lie in their order', () => {
  expect(onset.lowShare).toBeLessThan(onset.highShare);
  for (const { fitShare, powers, takenUpPowers, takeUpChance } of [onset.fast, onset.ramp]) {
    expect(onset.highShare).toBeLessThan(fitShare);
    expect(powers).toEqual([...powers].sort((a, b) => a - b));
    // what is tried after a take-up lies within what is tried without
    expect(Math.min(...takenUpPowers)).toBeGreaterThanOrEqual(powers[0]);
    expect(Math.max(...takenUpPowers)).toBeLessThanOrEqual(powers.at(-1)!);
    expect(takeUpChance).toBeLessThan(0.5);
  }
});
