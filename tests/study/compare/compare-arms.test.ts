import { expect, test } from 'vitest';
import { compareArms } from '../../../packages/study/src/compare/compare-arms.ts';
import { welchDifference } from '../../../packages/study/src/compare/mean-difference.ts';
import type { StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const CYCLING = [24, 28, 30, 26, 31];
const WALKING = [18, 20, 17, 22];

const GROUPS = [
  ...CYCLING.map((scored, at) => studyTrial(`c${at}.csv`, { person: `c${at}`, arm: 'cycling' }, scored)),
  ...WALKING.map((scored, at) => studyTrial(`w${at}.csv`, { person: `w${at}`, arm: 'walking' }, scored)),
];

function compared(trials: readonly TrialFacts[], differing: Partial<StudyFile['comparison']> = {}) {
  const study = declaredStudy({ comparison: { ...declaredStudy().comparison, ...differing } });
  return compareArms(study, qualityRows(study, trials, new Map()));
}

const reasonOf = (trials: readonly TrialFacts[], differing: Partial<StudyFile['comparison']> = {}): string => {
  const { result } = compared(trials, differing);
  return result.kind === 'compared' ? 'compared' : `${result.reason}: ${result.found}`;
};

test('two groups: one value a person, the difference of Welch, what it says', () => {
  const { result, people, error } = compared(GROUPS);
  expect(people).toHaveLength(9);
  expect(error).toBeUndefined();
  const { standardError, ...estimate } = welchDifference(CYCLING, WALKING, 0.95)!;
  expect(result).toMatchObject({
    kind: 'compared',
    method: 'welch',
    first: { n: 5, trials: 5 },
    second: { n: 4 },
    estimate,
  });
  expect(standardError).toBeGreaterThan(0);
  expect(result).toMatchObject({ conclusion: { differs: 'yes', greater: 'first' } });
});

test('a person with many trials counts once', () => {
  const copies = Array.from({ length: 20 }, (_, at) =>
    studyTrial(`more${at}.csv`, { person: 'c4', arm: 'cycling', visit: String(at) }, 31),
  );
  const { result } = compared([...GROUPS, ...copies]);
  const alone = compared(GROUPS).result;
  expect(result.kind === 'compared' && result.first.n).toBe(5);
  expect(result.kind === 'compared' && result.first.trials).toBe(25);
  expect(result.kind === 'compared' && result.estimate).toEqual(alone.kind === 'compared' && alone.estimate);
});

test('visits and sides are compared in pairs; who has one of the two is named', () => {
  const trials = [1, 2, 3, 4].flatMap((person) => [
    studyTrial(`l${person}.csv`, { person: `p${person}`, side: 'left' }, 20 + person),
    studyTrial(`r${person}.csv`, { person: `p${person}`, side: 'right' }, 15 + 2 * person),
  ]);
  const found = compared(trials.slice(0, 7), { of: 'sides', manifest: null, first: 'left', second: 'right' });
  expect(found.unpaired).toEqual(['p4']);
  // differences 4, 3, 2
  expect(found.result).toMatchObject({
    kind: 'compared',
    method: 'paired',
    first: { n: 3 },
    estimate: { value: 3, df: 2 },
  });
});

test('a ratio is that of geometric means, and its interval does not change with the unit', () => {
  const { result } = compared(GROUPS, { scale: 'ratio', margin: 1.1 });
  if (result.kind !== 'compared') throw new Error(result.reason);
  const geometric = (values: readonly number[]): number =>
    Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
  expect(result.estimate.value).toBeCloseTo(geometric(CYCLING) / geometric(WALKING), 12);
  expect(result.first.mean).toBeCloseTo(geometric(CYCLING), 12);
  expect(result.estimate.low).toBeGreaterThan(1);
});

test('refused with the reason and what was found', () => {
  const cap = { count: { attempted: 30, scored: 30, censored: true }, gate: { usable: 'yes' } };
  const [first, ...rest] = GROUPS;
  expect(reasonOf([{ ...first, figures: cap }, ...rest])).toBe('capped: 1 of 9 trials');
  expect(reasonOf([studyTrial('x.csv', { person: 'c1', arm: 'cycling' }, 25), ...GROUPS], { perPerson: 'only' })).toBe(
    'several-of-one-person: c1: c1.csv, x.csv',
  );
  expect(reasonOf([studyTrial('x.csv', { person: 'c1', arm: 'walking' }, 25), ...GROUPS])).toBe('in-both-groups: c1');
  expect(reasonOf([studyTrial('x.csv', { person: 'c9', arm: 'cycling' }, 0), ...GROUPS], { scale: 'ratio' })).toBe(
    'not-positive: x.csv: 0',
  );
  expect(reasonOf(GROUPS.slice(0, 7))).toBe('too-few: 5 and 2');
  const alike = GROUPS.map((one) => studyTrial(one.trial, one.cells, 20));
  expect(reasonOf(alike)).toBe('no-spread: 5 and 4');
});

test('what is not taken, not measured or of another group is not compared', () => {
  const more = [
    studyTrial('out.csv', { person: 'o1', arm: 'cycling', footwear: 'shoe' }, 1),
    studyTrial('copy.csv', { person: 'o2', arm: 'cycling' }, 1, { sameAs: 'c1.csv' }),
    studyTrial('none.csv', { person: 'o3', arm: 'cycling' }, null),
    studyTrial('rest.csv', { person: 'o4', arm: 'resting' }, 1),
  ];
  expect(compared([...more, ...GROUPS])).toEqual(compared(GROUPS));
});
