import { expect, test } from 'vitest';
import { forceBetween, handsFinding, kneeFinding } from '../../../../packages/analysis/src/raises/criteria/force.ts';
import { detectedSet, type SetDescription } from '../../../support/detected-set.ts';
import { setUnderJudgement } from '../../../support/set-under-judgement.ts';

const W = 700;

/** A platform set of slow repetitions with a force that is body weight but where the caller changes it. */
function platformSet(change: (timeS: number) => number, more: Partial<SetDescription> = {}) {
  const heightsM = Array<number>(3).fill(0.06);
  const bare = detectedSet({ heightsM, kind: 'body-rise', periodS: 4 });
  const forceN = bare.motion.heightM.map((_, k) => W + change(k / 100));
  return setUnderJudgement(
    detectedSet({
      heightsM,
      kind: 'body-rise',
      periodS: 4,
      motion: { forceN },
      detection: { bodyWeightN: W, bodyWeightUN: 2 },
      ...more,
    }),
  );
}

test('force between two instants is summed up, and unknown across a missing sample', () => {
  const set = platformSet((t) => (t < 3 ? 0 : 10));
  const { motion } = set.detection;
  expect(forceBetween(motion, 2, 2.5)).toMatchObject({ mean: W, least: W, most: W, sd: 0, count: 51 });
  expect(forceBetween(motion, 3, 3.001)).toBeUndefined();
  motion.forceN?.fill(Number.NaN, 250, 251);
  expect(forceBetween(motion, 2, 3)).toBeUndefined();
});

test('five per cent carried by the hands at the top is the limit', () => {
  // the hold is shorter than half a second, so the whole repetition counts: 2 to 6 s
  const light = platformSet((t) => (t < 6 ? -0.04 * W : 0));
  expect(handsFinding(light, 0)).toMatchObject({ result: 'pass', evidence: { unit: '1', fromS: 2, toS: 6 } });
  const heavy = platformSet((t) => (t < 6 ? -0.06 * W : 0));
  expect(handsFinding(heavy, 0).result).toBe('fail');
  // one sample of 401 lies at the end, where the force is whole again
  expect(Math.abs((handsFinding(heavy, 0).evidence?.value ?? 0) - 0.94)).toBeLessThan(0.0002);
  expect(handsFinding(heavy, 1).result).toBe('pass');
});

test('a long hold at the top is judged on its own', () => {
  const set = platformSet((t) => (t >= 3.5 && t <= 4.5 ? -0.08 * W : 0), {
    raises: { 0: { highFromS: 3.6, highToS: 4.4 } },
  });
  expect(handsFinding(set, 0)).toMatchObject({ result: 'fail', evidence: { fromS: 3.6, toS: 4.4 } });
});

test('without body weight or force the hands are not observed', () => {
  const weightless = setUnderJudgement(detectedSet({ heightsM: [0.06], kind: 'body-rise' }));
  expect(handsFinding(weightless, 0)).toMatchObject({ result: 'not_observed', reason: 'no-signal' });
  const blind = setUnderJudgement(detectedSet({ heightsM: [0.06] }), { seen: 'not-observed' });
  expect(handsFinding(blind, 0)).toMatchObject({ reason: 'placement' });
  expect(kneeFinding(blind, 0)).toMatchObject({ reason: 'placement' });
});

test('a dip before the rise asks for a look at the knee and decides nothing', () => {
  const dipped = platformSet((t) => (t >= 1.8 && t <= 1.9 ? -0.08 * W : 0));
  expect(kneeFinding(dipped, 0)).toMatchObject({
    result: 'not_observed',
    borderline: true,
    probability: null,
    reason: 'one-sign-of-several',
    evidence: { threshold: 0.95 },
  });
  expect(kneeFinding(dipped, 1)).toMatchObject({ result: 'not_observed', borderline: false });
});

test('a peak in the rise is a sign at a slow tempo only', () => {
  const peaked = (t: number) => (t >= 6.4 && t <= 6.6 ? 0.12 * W : 0);
  expect(kneeFinding(platformSet(peaked), 1)).toMatchObject({ borderline: true, evidence: { threshold: 1.1 } });
  const quick = platformSet(peaked);
  const tempo = quick.tempo.map((part) => ({ ...part, periodS: 2 }));
  expect(kneeFinding({ ...quick, tempo }, 1)).toMatchObject({ borderline: false });
});
