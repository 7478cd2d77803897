import { expect, test } from 'vitest';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import type { StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { analysesOf } from '../../../packages/study/src/multiverse/analyses.ts';
import { multiverse } from '../../../packages/study/src/multiverse/multiverse.ts';
import {
  choicesTable,
  multiverseTable,
  outcomesTable,
} from '../../../packages/study/src/multiverse/multiverse-tables.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const why = 'as common';
const study: StudyFile = declaredStudy({
  choices: [
    { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why },
    { parameter: 'exclusion.shod', values: ['not-applied'], why },
    { parameter: 'perPerson', values: ['greatest'], why },
  ],
});

const KEY = 'protocol.heightFraction';

/** Trials of both groups whose scores are so much higher in the first; one more there in shoes, far below. */
function trials(ahead: number): TrialFacts[] {
  const scores = [20, 22, 19, 21, 20];
  return [
    ...scores.map((one, at) => studyTrial(`c${at}.csv`, { person: `c${at}`, arm: 'cycling' }, one + ahead)),
    studyTrial('c0-again.csv', { person: 'c0', arm: 'cycling' }, 21 + ahead),
    studyTrial('shod.csv', { person: 'c9', arm: 'cycling', footwear: 'shoe' }, 1),
    ...scores.map((one, at) => studyTrial(`w${at}.csv`, { person: `w${at}`, arm: 'walking' }, one)),
  ];
}

const FOUND = new Map([
  ['as declared', trials(6)],
  [`${KEY}=0.6`, trials(5)],
  [`${KEY}=0.9`, trials(0)],
]);

const none = new Map<string, never>();

test('every analysis is the comparison that it would be alone', () => {
  const analyses = analysesOf(study);
  const { results } = multiverse(study, analyses, FOUND, none);
  expect(results).toHaveLength(12);
  for (const { analysis, comparison } of results) {
    const rows = qualityRows(analysis.study, FOUND.get(analysis.assessment.key)!, none, analysis.notApplied);
    expect(comparison).toEqual(compareArms(analysis.study, rows));
  }
  expect(results[0].comparison).toEqual(compareArms(study, qualityRows(study, trials(6), none)));
});

test('how many of how many say something else, by hand', () => {
  const found = multiverse(study, analysesOf(study), FOUND, none);
  const { declared, results, compared, changed } = found;
  expect(declared.comparison.result).toMatchObject({ conclusion: { differs: 'yes', greater: 'first' } });
  // the one in shoes makes the interval wide; at 0.9 nothing is left of the difference
  const differing = results.map(({ analysis: { choices }, changes }) => [...choices.values(), changes]);
  expect(differing.filter(([shod, , height]) => shod === 'applied' && height !== 0.9).map((one) => one.at(-1))).toEqual(
    Array(4).fill(false),
  );
  expect(
    differing.filter(([shod, , height]) => shod === 'not-applied' || height === 0.9).map((one) => one.at(-1)),
  ).toEqual(Array(8).fill(true));
  expect([compared, changed]).toEqual([12, 8]);
});

test('a difference the other way round says something else', () => {
  const turned = new Map([...FOUND, [`${KEY}=0.6`, trials(-6)]]);
  const { singles } = multiverse(study, analysesOf(study), turned, none);
  expect(singles[2].result.comparison.result).toMatchObject({ conclusion: { differs: 'yes', greater: 'second' } });
  expect(singles[2].result.changes).toBe(true);
});

test('each choice alone: how far it moves the estimate, and which moves it most', () => {
  const { singles, strongest, declared } = multiverse(study, analysesOf(study), FOUND, none);
  expect(singles.map(({ parameter, value }) => `${parameter} ${value}`)).toEqual([
    'exclusion.shod not-applied',
    'perPerson greatest',
    `${KEY} 0.6`,
    `${KEY} 0.9`,
  ]);
  const { result } = declared.comparison;
  if (result.kind !== 'compared') throw new Error(result.reason);
  // the estimate falls by exactly 1 and by exactly 6
  expect(singles[2].shiftInErrors).toBeCloseTo(-1 / result.estimate.standardError, 10);
  expect(singles[3].shiftInErrors).toBeCloseTo(-6 / result.estimate.standardError, 10);
  expect(singles[3].withValue).toEqual({ compared: 4, changed: 4 });
  expect(singles[2].withValue).toEqual({ compared: 4, changed: 2 });
  expect(strongest).toBe(singles[3]);
});

test('the order of trials, choices and values makes no difference, not even in the last digit', () => {
  const other = {
    ...study,
    choices: [...study.choices].reverse().map((one) => ({ ...one, values: [...one.values].reverse() })),
  };
  const backwards = new Map([...FOUND].reverse().map(([key, list]) => [key, [...list].reverse()]));
  const one = multiverse(study, analysesOf(study), FOUND, none);
  const two = multiverse(other, analysesOf(other), backwards, none);
  expect(multiverseTable(other, two)).toEqual(multiverseTable(study, one));
  expect(choicesTable(other, two)).toEqual(choicesTable(study, one));
});

test('an analysis that can say nothing is counted apart and is no change', () => {
  const few = new Map([...FOUND, [`${KEY}=0.9`, trials(0).slice(0, 4)]]);
  const { compared, changed, results, singles } = multiverse(study, analysesOf(study), few, none);
  expect(compared).toBe(8);
  expect(changed).toBe(results.filter(({ changes }) => changes === true).length);
  expect(singles[3]).toMatchObject({ shiftInErrors: null, withValue: { compared: 0, changed: 0 } });
  const nothing = new Map([...FOUND].map(([key]) => [key, [] as TrialFacts[]]));
  expect(multiverse(study, analysesOf(study), nothing, none)).toMatchObject({
    compared: 0,
    changed: null,
    strongest: null,
  });
});

test('an assessment without its trials is missed', () => {
  const without = new Map([['as declared', trials(6)]]);
  expect(() => multiverse(study, analysesOf(study), without, none)).toThrow(
    `expected the trials as assessed ${KEY}=0.6, got none`,
  );
});

test('the tables hold every analysis, every choice alone, and every trial under every assessment', () => {
  const analyses = analysesOf(study);
  const found = multiverse(study, analyses, FOUND, none);
  const table = multiverseTable(study, found);
  const row = (at: number, of = table): Record<string, unknown> =>
    Object.fromEntries(of.columns.map(({ key }, place) => [key, of.rows[at][place]]));
  expect(table.rows).toHaveLength(12);
  expect(row(0)).toMatchObject({ analysis: 'a0001', declared: true, 'choice.perPerson': 'mean', changes: false });
  expect(row(0, choicesTable(study, found))).toMatchObject({
    parameter: 'exclusion.shod',
    declared_value: 'applied',
    value: 'not-applied',
    changes: true,
    why,
  });
  const outcomes = outcomesTable(study, [...new Set(analyses.map(({ assessment }) => assessment))], FOUND);
  expect(outcomes.columns.map(({ key }) => key)).toContain('measures.peak_height_mm');
  expect(row(0, outcomes)).toMatchObject({
    assessed: 'as declared',
    file: 'c0.csv',
    'count.scored': 26,
    arm: 'cycling',
  });
});
