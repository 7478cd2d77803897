import { expect, test } from 'vitest';
import { armTrials, personValues } from '../../../packages/study/src/compare/person-values.ts';
import type { PerPerson, StudyFile } from '../../../packages/study/src/declared/study-document.ts';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import type { TrialFacts } from '../../../packages/study/src/quality/trial-facts.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

const study = declaredStudy();

function trialsOf(facts: readonly TrialFacts[], of: StudyFile = study): ReturnType<typeof armTrials> {
  return armTrials(of, qualityRows(of, facts, new Map()));
}

const REPEATED = [
  studyTrial('late.csv', { person: 'p1', arm: 'cycling', date: '2026-03-09' }, 8),
  studyTrial('early.csv', { person: 'p1', arm: 'cycling', date: '2026-03-01' }, 2),
  studyTrial('other.csv', { person: 'p2', arm: 'walking', visit: '10' }, 5),
  studyTrial('another.csv', { person: 'p2', arm: 'walking', visit: '9' }, 7),
  studyTrial('third.csv', { person: 'p3', arm: 'resting' }, 99),
];

test.each<[PerPerson, 'difference' | 'ratio', number[]]>([
  ['mean', 'difference', [5, 6]],
  ['mean', 'ratio', [4, Math.sqrt(35)]],
  ['greatest', 'difference', [8, 7]],
  ['first', 'difference', [2, 7]],
])('several trials of a person become one value: %s, %s', (perPerson, scale, values) => {
  const found = personValues(trialsOf(REPEATED), { ...study.comparison, perPerson, scale });
  expect(found.map(({ person, arm }) => [person, arm])).toEqual([
    ['p1', 'first'],
    ['p2', 'second'],
  ]);
  found.forEach(({ value }, at) => expect(value).toBeCloseTo(values[at], 12));
});

test('the order in which trials come makes no difference, not even in the last digit', () => {
  const one = personValues(trialsOf(REPEATED), study.comparison);
  expect(personValues(trialsOf([...REPEATED].reverse()), study.comparison)).toEqual(one);
  expect(one[0].trials).toEqual(['early.csv', 'late.csv']);
  // visits are numbers where they are written so: 9 comes before 10
  expect(one[1].trials).toEqual(['another.csv', 'other.csv']);
});

test('a score at the cap is a lower bound, and so is what is summed over scored repetitions; a height is not', () => {
  const capped = studyTrial('a.csv', { person: 'p1', arm: 'cycling' }, 60, {
    figures: {
      count: { attempted: 60, scored: 60, censored: true },
      measures: { peakHeightM: 0.1, scoredDisplacementM: { value: 5 } },
      gate: { usable: 'yes' },
    },
  });
  const isCapped = (primary: string): boolean | undefined =>
    trialsOf([capped], declaredStudy({ outcomes: { primary, secondary: [] } }))[0]?.isCapped;
  expect(isCapped('count.scored')).toBe(true);
  expect(isCapped('measures.scored_displacement_m')).toBe(true);
  expect(isCapped('count.attempted')).toBe(false);
  expect(isCapped('measures.peak_height_mm')).toBe(false);
});
