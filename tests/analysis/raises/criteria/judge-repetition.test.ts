import { expect, test } from 'vitest';
import { judgeRepetition } from '../../../../packages/analysis/src/raises/criteria/judge-repetition.ts';
import { detectedSet } from '../../../support/detected-set.ts';
import { setUnderJudgement } from '../../../support/set-under-judgement.ts';

const onlyHeight = (id: string) => (id === 'height' || id === 'gap' ? 'measured' : 'not-observed');

test('a plain repetition is valid, a low one is not, one at the threshold cannot be told', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.1, 0.06, 0.0755], uM: 0.002 }), { seenBy: onlyHeight });
  expect(judgeRepetition(set, 0, [])).toMatchObject({ valid: 'yes', passes: true, headline: null });
  expect(judgeRepetition(set, 1, [])).toMatchObject({ valid: 'no', passes: false, headline: 'height' });
  expect(judgeRepetition(set, 2, [])).toMatchObject({ valid: 'cannot_tell', passes: true, borderline: true });
});

test('the probability is the product over what was measured', () => {
  const detection = detectedSet({ heightsM: [0.077, 0.1], uM: 0.002, rests: { 0: 0.58 }, timeUS: 0.02 });
  const judgement = judgeRepetition(setUnderJudgement(detection), 0, []);
  const { criteria } = judgement;
  const product = (['height', 'return', 'rest', 'bounce'] as const).reduce(
    (sum, id) => sum * (criteria[id].probability ?? 1),
    1,
  );
  expect(judgement.probabilityValid).toBeCloseTo(product, 12);
  expect(criteria.height.probability).toBeLessThan(0.9);
  expect(criteria.rest.probability).toBeLessThan(0.9);
});

test('the reasons keep their order: height before rest', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.05, 0.1], rests: { 0: 3 } }));
  const judgement = judgeRepetition(set, 0, []);
  expect(judgement.criteria.rest.result).toBe('fail');
  expect(judgement.headline).toBe('height');
});

test('a gap leaves the verdict open, whatever else was seen', () => {
  const detection = detectedSet({
    heightsM: [0.1, 0.05],
    raises: { 0: { longestGapS: 0.4 }, 1: { longestGapS: 0.4 } },
  });
  for (const i of [0, 1]) {
    const judgement = judgeRepetition(setUnderJudgement(detection), i, []);
    expect(judgement).toMatchObject({ valid: 'cannot_tell', passes: false, probabilityValid: null });
  }
});

test('what is only inferred can raise a doubt but makes nothing invalid', () => {
  const seenBy = (id: string) => (id === 'return' ? 'inferred' : onlyHeight(id));
  const detection = detectedSet({ heightsM: [0.1, 0.1], raises: { 0: { lowAfterM: 0.04 } } });
  const set = setUnderJudgement(detection, { seenBy });
  expect(judgeRepetition(set, 0, [])).toMatchObject({ valid: 'cannot_tell', passes: true, borderline: true });
  expect(judgeRepetition(set, 1, [])).toMatchObject({ valid: 'yes', borderline: false });
});

test('a mark of the tester makes a repetition invalid for what no sensor saw', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.1] }), { seenBy: onlyHeight });
  const judgement = judgeRepetition(set, 0, ['knee']);
  expect(judgement).toMatchObject({ valid: 'no', passes: false, headline: 'knee', probabilityValid: 0 });
  expect(judgement.criteria.knee).toMatchObject({ result: 'fail', seen: 'tester' });
});

test('the other foot is never passed in silence', () => {
  const set = setUnderJudgement(detectedSet({ heightsM: [0.1] }));
  expect(judgeRepetition(set, 0, []).criteria['other-foot']).toMatchObject({
    result: 'not_observed',
    reason: 'placement',
  });
});
