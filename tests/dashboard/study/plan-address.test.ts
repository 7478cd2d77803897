import { expect, test } from 'vitest';
import { askedQuestion, faultsOf, fieldsAt, readFields } from '../../../apps/dashboard/src/design/design-form.ts';
import { planAddress } from '../../../apps/dashboard/src/study/plan-address.ts';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

type Trials = Parameters<typeof qualityRows>[1];
type Study = ReturnType<typeof declaredStudy>;

const addressFor = (study: Study, trials: Trials): string | null =>
  planAddress(study, compareArms(study, qualityRows(study, trials, new Map())));

const groups = [18, 20, 22].flatMap((one) => [
  studyTrial(`c${one}.csv`, { person: `c${one}`, arm: 'cycling' }, one),
  studyTrial(`w${one}.csv`, { person: `w${one}`, arm: 'walking' }, one === 22 ? 17 : one - 9),
]);

test('groups hand on their pooled spread with the people that it is worth, and no difference', () => {
  // 18, 20, 22 spread by 2; 9, 11, 17 by root (17.333): pooled root ((4 + 17.333) / 2) = 3.266 with 4 degrees of freedom
  const address = addressFor(declaredStudy(), groups);
  expect(address).toBe('groups.;sd.expected=3.27;sd.people=5');
  const read = readFields(fieldsAt(address!));
  expect([...faultsOf(read)]).toEqual([['difference', 'missing']]);
});

test('the same people hand on the spread of their differences', () => {
  const { comparison } = declaredStudy();
  const visits = declaredStudy({
    comparison: { ...comparison, of: 'visits', manifest: null, first: '2', second: '1' },
  });
  const trials = [1, 2, 3].flatMap((person) => [
    studyTrial(`a${person}.csv`, { person: `p${person}`, visit: '1' }, 10),
    studyTrial(`b${person}.csv`, { person: `p${person}`, visit: '2' }, 10 + person),
  ]);
  // differences 1, 2, 3 spread by 1
  const address = addressFor(visits, trials);
  expect(address).toBe('paired.sd-change;sd-change.expected=1;sd-change.people=3');
  expect(askedQuestion(fieldsAt(address!)).way).toBe('sd-change');
});

test('where nothing is compared, and of ratios, nothing is handed on', () => {
  const { comparison } = declaredStudy();
  expect(addressFor(declaredStudy(), groups.slice(0, 2))).toBeNull();
  expect(addressFor(declaredStudy({ comparison: { ...comparison, scale: 'ratio', margin: null } }), groups)).toBeNull();
});
