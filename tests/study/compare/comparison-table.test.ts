import { expect, test } from 'vitest';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import { comparisonTable, peopleTable } from '../../../packages/study/src/compare/comparison-table.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy();

const trials = [24, 28, 30, 26].flatMap((scored, at) => [
  studyTrial(`c${at}.csv`, { person: `c${at}`, arm: 'cycling' }, scored),
  studyTrial(`d${at}.csv`, { person: `c${at}`, arm: 'cycling' }, scored + 1 + at),
  studyTrial(`w${at}.csv`, { person: `w${at}`, arm: 'walking' }, scored - 6),
]);

function tableOf(facts: readonly TrialFacts[]) {
  const comparison = compareArms(study, qualityRows(study, facts, new Map()));
  const { columns, rows } = comparisonTable(study, comparison);
  return { row: Object.fromEntries(columns.map(({ key }, at) => [key, rows[0][at]])), comparison, columns };
}

test('one row says what was compared, how, with which result and how well it repeats', () => {
  const { row, comparison, columns } = tableOf(trials);
  const { result, error } = comparison;
  if (result.kind !== 'compared') throw new Error(result.reason);
  expect(new Set(columns.map(({ key }) => key)).size).toBe(columns.length);
  expect(row).toMatchObject({
    outcome: 'count.scored',
    first: 'cycling',
    second: 'walking',
    method: 'welch',
    margin: 3,
  });
  expect(row).toMatchObject({ first_people: 4, first_trials: 8, second_people: 4, estimate: result.estimate.value });
  expect(row).toMatchObject({ differs: 'yes', greater: 'first', not_compared: null, sem: error!.sem.value, sem_df: 4 });
  expect(row['estimate_in_sems']).toBeCloseTo(result.estimate.value / error!.sem.value, 12);
});

test('where nothing is compared the figures are empty and the reason stands beside them', () => {
  const { row } = tableOf(trials.slice(0, 3));
  expect(row).toMatchObject({
    estimate: null,
    low: null,
    differs: null,
    not_compared: 'too-few: 1 and 1',
    first_people: 1,
  });
});

test('each person has one row, with the trials that the value came of', () => {
  const { comparison } = tableOf(trials);
  const { rows } = peopleTable(study, comparison);
  expect(rows).toHaveLength(8);
  expect(rows[0]).toEqual(['c0', 'cycling', 24.5, 'c0.csv; d0.csv']);
});
