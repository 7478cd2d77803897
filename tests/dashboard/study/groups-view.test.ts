import { expect, test } from 'vitest';
import { groupsView, repeatLines } from '../../../apps/dashboard/src/study/groups-view.ts';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

type Trials = Parameters<typeof qualityRows>[1];

const view = (study: ReturnType<typeof declaredStudy>, trials: Trials): ReturnType<typeof groupsView> =>
  groupsView(study, compareArms(study, qualityRows(study, trials, new Map())));

const groups = [18, 20, 22].flatMap((one) => [
  studyTrial(`c${one}.csv`, { person: `c${one}`, arm: 'cycling' }, one),
  studyTrial(`w${one}.csv`, { person: `w${one}`, arm: 'walking' }, one - 9),
]);

test('the sentence, the estimate with its interval, what was compared how, and both as a table', () => {
  const { sentence, lines, rows } = view(declaredStudy(), groups);
  expect(sentence).toBe('cycling is higher than walking');
  // means 20 and 11, both with a deviation of 2: 9 with a standard error of 1.633 and 4 degrees of freedom, t 2.776
  expect(lines).toEqual([
    'cycling less walking: 9.0 (95 %: 4.5 to 13.5)',
    'People of two groups, one value each, without the assumption that both spread alike. Several trials of one person count as their mean.',
  ]);
  expect(rows).toEqual([
    { name: 'cycling', people: 3, trials: 3, mean: '20.0', sd: '2.0' },
    { name: 'walking', people: 3, trials: 3, mean: '11.0', sd: '2.0' },
  ]);
});

test('visits and legs have names, without a margin that is said, and who is not compared is named', () => {
  const { comparison } = declaredStudy();
  const visits = declaredStudy({
    comparison: { ...comparison, of: 'visits', manifest: null, first: '2', second: '1', margin: null },
  });
  const trials = [1, 2, 3, 4].flatMap((person) => [
    studyTrial(`a${person}.csv`, { person: `p${person}`, visit: '1' }, 10 + person),
    ...(person === 4 ? [] : [studyTrial(`b${person}.csv`, { person: `p${person}`, visit: '2' }, 10 + 2 * person)]),
  ]);
  const { sentence, lines } = view(visits, trials);
  expect(sentence).toBe('Cannot tell yet whether visit 2 or visit 1 is higher');
  expect(lines.slice(1)).toEqual([
    'The same people, one value each time. Several trials of one person count as their mean.',
    'No margin was declared, so it is never said that there is no difference.',
    'One of the two is missing of: p4. They are not compared.',
  ]);
});

test('why nothing is compared is said, and no table stands there', () => {
  const { sentence, lines, rows } = view(declaredStudy(), groups.slice(0, 3));
  expect([sentence, ...lines, rows.length]).toEqual([
    'Nothing is compared',
    'Too few people: 2 and 1. Something is said from three on.',
    0,
  ]);
});

test('how well it repeats stands with its interval, what it is worth, and never as no error where nothing repeats', () => {
  const { comparison } = declaredStudy();
  expect(repeatLines(undefined, comparison)).toEqual([
    expect.stringContaining('That is no proof that there is no error.'),
  ]);
  const error = { sem: { value: 2, low: 1.5, high: 3 }, df: 12, sets: 11 };
  // 1.96 root 2 times 2 is 5.5
  expect(repeatLines(error, comparison)).toEqual([
    'Standard error of one measurement: 2.00 (95 %: 1.50 to 3.00).',
    'Several trials of one person on one visit with one leg: 11 times.',
    'In one person a change is told from measurement error at 95 % from 5.5 on (4.2 to 8.3).',
    'Pairs of repeats: 12. Shown, and not to be used under 15.',
    'Trials of one visit: the error between days is larger.',
  ]);
  const ratio = repeatLines(
    { sem: { value: 0.1, low: 0.08, high: 0.14 }, df: 20, sets: 20 },
    { ...comparison, scale: 'ratio' },
  );
  expect(ratio[0]).toContain('as a factor: 1.105 (95 %: 1.083 to 1.150)');
  expect(ratio).toHaveLength(4);
});
