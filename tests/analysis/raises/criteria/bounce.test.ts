import { expect, test } from 'vitest';
import { bounceFinding } from '../../../../packages/analysis/src/raises/criteria/bounce.ts';
import { detectedSet } from '../../../support/detected-set.ts';
import { setUnderJudgement } from '../../../support/set-under-judgement.ts';

// a raise of 12 cm in 0.8 s comes through 10 mm at about 0.26 m/s, in 0.5 s at about 0.42 m/s
const contact = (heightM: number, periodS: number, levelM: number): number => {
  const phase = Math.acos(1 - (2 * levelM) / heightM);
  return ((heightM * Math.PI) / periodS) * Math.sin(phase);
};

test('a fast contact followed at once by the next rise is a bounce of that next repetition', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.12, 0.12, 0.12], periodS: 0.5, timeUS: 0 }));
  const finding = bounceFinding(set, 1);
  expect(finding).toMatchObject({ result: 'fail', evidence: { unit: 'm/s', threshold: 0.35 } });
  // the low-pass at 6 Hz takes a little off a movement of 2 Hz
  expect(Math.abs((finding.evidence?.value ?? 0) / contact(0.12, 0.5, 0.01) - 1)).toBeLessThan(0.12);
  expect(bounceFinding(set, 0)).toMatchObject({ result: 'not_observed', reason: 'first-repetition' });
});

test('the same contact with a rest after it is none, and neither is a slow contact', () => {
  const rested = setUnderJudgement(detectedSet({ heightsM: [0.12, 0.12], periodS: 0.5, rests: { 0: 0.3 }, timeUS: 0 }));
  expect(bounceFinding(rested, 1).result).toBe('pass');
  const slow = setUnderJudgement(detectedSet({ heightsM: [0.12, 0.12], periodS: 0.8, timeUS: 0 }));
  expect(bounceFinding(slow, 1).result).toBe('pass');
});

test('a spike of a third of body weight at the bottom is a bounce by force', () => {
  const heightsM = [0.06, 0.06];
  const bare = detectedSet({ heightsM, kind: 'body-rise' });
  const forceN = bare.motion.heightM.map((_, k) => (k === 405 ? 930 : 700));
  const detection = { bodyWeightN: 700, bodyWeightUN: 1 };
  const set = setUnderJudgement(detectedSet({ heightsM, kind: 'body-rise', motion: { forceN }, detection }));
  expect(bounceFinding(set, 1)).toMatchObject({ result: 'fail', evidence: { threshold: 1.25, unit: '1' } });
  const soft = bare.motion.heightM.map((_, k) => (k === 405 ? 850 : 700));
  const mild = setUnderJudgement(detectedSet({ heightsM, kind: 'body-rise', motion: { forceN: soft }, detection }));
  expect(bounceFinding(mild, 1)).toMatchObject({ result: 'pass', evidence: { unit: 'm/s' } });
});

test('across a gap, or without metres, a bounce is not observed', () => {
  const detection = detectedSet({ heightsM: [0.1, 0.1], raises: { 0: { longestGapS: 0.3 } } });
  detection.motion.heightM.fill(Number.NaN, 300, 401);
  expect(bounceFinding(setUnderJudgement(detection), 1)).toMatchObject({ result: 'not_observed', reason: 'gap' });
  const noLever = setUnderJudgement(detectedSet({ heightsM: [0.1, 0.1] }), { heightsKnown: false });
  expect(bounceFinding(noLever, 1)).toMatchObject({ result: 'not_observed', reason: 'no-signal' });
});
