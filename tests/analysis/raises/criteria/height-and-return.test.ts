import { expect, test } from 'vitest';
import { heightFinding, returnFinding } from '../../../../packages/analysis/src/raises/criteria/height-and-return.ts';
import { detectedSet } from '../../../support/detected-set.ts';
import { parametersWith, setUnderJudgement } from '../../../support/set-under-judgement.ts';

test('75 % of the reference is high enough, 74 % is not', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.075, 0.074], uM: 0 }));
  expect(heightFinding(set, 0)).toMatchObject({ result: 'pass', evidence: { threshold: 0.75, unit: '1' } });
  expect(heightFinding(set, 1)).toMatchObject({ result: 'fail', probability: 0 });
});

test('the uncertainty joins that of the height and that of the reference at the threshold', () => {
  const reference = { heightM: 0.1, heightUM: 0.004, fromRepetitions: [1], raised: false };
  const set = setUnderJudgement(detectedSet({ heightsM: [0.08], uM: 0.002 }), { reference });
  expect(heightFinding(set, 0).evidence?.u).toBeCloseTo(Math.hypot(0.002, 0.75 * 0.004) / 0.1, 12);
});

test('an error that all heights share is not in the share of the reference', () => {
  const detection = detectedSet({ heightsM: [0.08], uM: 0.005 });
  const set = setUnderJudgement(detection, { commonRelativeU: 0.05 });
  expect(heightFinding(set, 0).evidence?.u).toBeCloseTo(0.03, 12);
});

test('a top in a gap, a missing reference and a placement that sees no height are not observed', () => {
  const gapped = setUnderJudgement(detectedSet({ heightsM: [0.1], raises: { 0: { topInGap: true } } }));
  expect(heightFinding(gapped, 0)).toMatchObject({ result: 'not_observed', reason: 'gap' });
  const bare = setUnderJudgement(detectedSet({ heightsM: [0.1] }), { reference: undefined });
  expect(heightFinding(bare, 0)).toMatchObject({ result: 'not_observed', reason: 'no-reference' });
  const blind = setUnderJudgement(detectedSet({ heightsM: [0.1] }), { seen: 'not-observed' });
  expect(heightFinding(blind, 0)).toMatchObject({ result: 'not_observed', reason: 'placement' });
  const open = setUnderJudgement(detectedSet({ heightsM: [0.1] }), {
    parameters: parametersWith({ heightFraction: null }),
  });
  expect(heightFinding(open, 0)).toMatchObject({ result: 'not_observed', reason: 'not-asked' });
});

test('the bottom may stay 10 mm up, or 10 % of a larger reference', () => {
  const detection = detectedSet({
    heightsM: [0.1, 0.1],
    raises: { 0: { lowAfterM: 0.0099 }, 1: { lowAfterM: 0.0125 } },
  });
  const set = setUnderJudgement(detection);
  expect(returnFinding(set, 0)).toMatchObject({ result: 'pass', evidence: { value: 0.0099, unit: 'm' } });
  expect(returnFinding(set, 1).result).toBe('fail');
  const tall = setUnderJudgement(detection, {
    reference: { heightM: 0.14, heightUM: 0, fromRepetitions: [1], raised: false },
  });
  expect(returnFinding(tall, 1)).toMatchObject({ result: 'pass', evidence: { value: 0.0125 } });
});

test('a foot without its lever is judged by the share of the reference alone', () => {
  const detection = detectedSet({ heightsM: [0.1], raises: { 0: { lowAfterM: 0.012 } } });
  const set = setUnderJudgement(detection, { heightsKnown: false });
  const finding = returnFinding(set, 0);
  expect(finding).toMatchObject({ result: 'fail', evidence: { threshold: 0.1, unit: '1' } });
  expect(finding.evidence?.value).toBeCloseTo(0.12, 12);
});

test('a bottom that was not observed passes nothing', () => {
  const { lowAfterM, ...raise } = detectedSet({ heightsM: [0.1] }).raises[0];
  expect(lowAfterM).toBe(0);
  const set = setUnderJudgement(detectedSet({ heightsM: [0.1], detection: { raises: [raise] } }));
  expect(returnFinding(set, 0)).toMatchObject({ result: 'not_observed', reason: 'no-signal' });
});
