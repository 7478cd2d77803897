import { expect, test } from 'vitest';
import { gapFinding, leanFinding } from '../../../../packages/analysis/src/raises/criteria/lean-and-gap.ts';
import { detectedSet } from '../../../support/detected-set.ts';
import { setUnderJudgement } from '../../../support/set-under-judgement.ts';

function trunkSet(leanDeg: number) {
  const heightsM = [0.05, 0.05];
  const bare = detectedSet({ heightsM, kind: 'body-rise' });
  // the first repetition rises from 2 to 3 s; the pitch before it does not matter
  const trunkPitchRad = bare.motion.heightM.map((_, k) => ((k >= 250 && k < 350 ? leanDeg + 5 : 5) * Math.PI) / 180);
  return setUnderJudgement(detectedSet({ heightsM, kind: 'body-rise', motion: { trunkPitchRad } }));
}

test('a change of pitch of more than ten degrees in the rise is a lean, in either direction', () => {
  expect(leanFinding(trunkSet(9), 0).result).toBe('pass');
  expect(leanFinding(trunkSet(11), 0)).toMatchObject({ result: 'fail', evidence: { unit: 'deg', threshold: 10 } });
  expect(leanFinding(trunkSet(-11), 0).evidence?.value).toBeCloseTo(11, 9);
  expect(leanFinding(trunkSet(11), 1).result).toBe('pass');
});

test('without a pitch, or with a hole in it, a lean is not observed', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.05], kind: 'body-rise' }));
  expect(leanFinding(set, 0)).toMatchObject({ result: 'not_observed', reason: 'no-signal' });
  const holed = trunkSet(0);
  holed.detection.motion.trunkPitchRad?.fill(Number.NaN, 260, 262);
  expect(leanFinding(holed, 0).result).toBe('not_observed');
});

test('up to a quarter of a second may be missing', () => {
  const set = setUnderJudgement(
    detectedSet({ heightsM: [0.1, 0.1], raises: { 0: { longestGapS: 0.25 }, 1: { longestGapS: 0.3 } } }),
  );
  expect(gapFinding(set, 0).result).toBe('pass');
  expect(gapFinding(set, 1)).toMatchObject({ result: 'fail', evidence: { value: 0.3, threshold: 0.25, unit: 's' } });
});
