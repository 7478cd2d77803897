import { expect, test } from 'vitest';
import { restFinding, tempoFinding } from '../../../../packages/analysis/src/raises/criteria/tempo-and-rest.ts';
import { detectedSet } from '../../../support/detected-set.ts';
import { parametersWith, setUnderJudgement } from '../../../support/set-under-judgement.ts';

const six = Array<number>(6).fill(0.1);

test('one late repetition is on the beat, the second in a row is off', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: six, rests: { 1: 0.5, 2: 0.5 } }));
  const results = six.map((_, i) => tempoFinding(set, i).result);
  // the periods into repetitions 3 and 4 are 2.5 s
  expect(results).toEqual(['not_observed', 'pass', 'pass', 'fail', 'pass', 'pass']);
  expect(tempoFinding(set, 3).evidence).toMatchObject({ value: 2.5, threshold: 2.4, unit: 's' });
});

test('the edges of the band, 1.6 and 2.4 s, are on the beat', () => {
  for (const periodS of [1.6, 2.4]) {
    const set = setUnderJudgement(detectedSet({ heightsM: six, periodS, timeUS: 0 }));
    expect(six.map((_, i) => tempoFinding(set, i).result)).toEqual(['not_observed', ...Array<string>(5).fill('pass')]);
  }
  const quick = setUnderJudgement(detectedSet({ heightsM: six, periodS: 1.59, timeUS: 0 }));
  expect(tempoFinding(quick, 2)).toMatchObject({ result: 'fail', probability: 0, evidence: { threshold: 1.6 } });
});

test('the probability of being off is that of every period in the row', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: six, periodS: 2.4, timeUS: 0.05 }));
  // each period lies on the edge: off with one half, two in a row with a quarter
  expect(tempoFinding(set, 3).probability).toBeCloseTo(0.75, 9);
  expect(tempoFinding(set, 3).borderline).toBe(true);
});

test('the first repetition has nothing to be timed against, and without a beat nothing is asked', () => {
  const detection = detectedSet({ heightsM: six });
  expect(tempoFinding(setUnderJudgement(detection), 0)).toMatchObject({
    reason: 'first-repetition',
    probability: null,
  });
  const free = setUnderJudgement(detection, { parameters: parametersWith({ cue: 'none' }) });
  expect(tempoFinding(free, 3)).toMatchObject({ result: 'not_observed', reason: 'not-asked' });
  expect(restFinding(free, 3)).toMatchObject({ result: 'not_observed', reason: 'not-asked' });
});

test('0.6 s at the bottom is no rest, 0.7 s is', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: six, rests: { 0: 0.6, 1: 0.7 }, timeUS: 0 }));
  expect(restFinding(set, 0).result).toBe('pass');
  expect(restFinding(set, 1)).toMatchObject({ result: 'fail', evidence: { unit: 's' } });
  expect(restFinding(set, 5)).toMatchObject({ result: 'not_observed', reason: 'last-repetition' });
});

test('the uncertainty of a rest joins the end before and the start after', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: six, timeUS: 0.03 }));
  expect(restFinding(set, 0).evidence?.u).toBeCloseTo(0.03 * Math.SQRT2, 12);
});
