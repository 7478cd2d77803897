import { expect, test } from 'vitest';
import type { ComparedArms } from '../../../packages/study/src/compare/compare-arms.ts';
import { conclusionWords, contrastWords, estimateWords } from '../../../packages/study/src/picture/conclusion-words.ts';
import { declaredStudy } from '../../support/declared-study.ts';

const arm = { n: 9, mean: 1, sd: 1, trials: 9 };
const estimate = { value: 1.234, low: -0.5, high: 2.5, standardError: 1, df: 8, t: 1, p: 0.3 };

const compared = (conclusion: ComparedArms['conclusion']): ComparedArms => ({
  kind: 'compared',
  method: 'welch',
  first: arm,
  second: arm,
  estimate,
  conclusion,
});

const { comparison } = declaredStudy();
const visits = { ...comparison, of: 'visits', manifest: null, first: '2', second: '1' } as const;
const sides = { ...comparison, of: 'sides', manifest: null, first: 'left', second: 'right', scale: 'ratio' } as const;

test('a sentence for each answer, with groups, visits and legs by their names', () => {
  const yes = compared({ differs: 'yes', greater: 'second' });
  const none = compared({ differs: 'cannot_tell', greater: null });
  const no = compared({ differs: 'no', greater: null });
  expect(conclusionWords(yes, comparison)).toBe('walking is higher than cycling');
  expect(conclusionWords(yes, visits)).toBe('Visit 1 is higher than visit 2');
  expect(conclusionWords(none, sides)).toBe('Cannot tell whether the left leg or the right leg is higher');
  expect(conclusionWords(no, sides)).toBe('The left leg and the right leg differ by less than the margin of 3');
});

test('what the estimate is of, and the estimate with the digits that its interval allows', () => {
  expect(contrastWords(comparison)).toBe('cycling less walking');
  expect(contrastWords(visits)).toBe('visit 2 less visit 1');
  expect(contrastWords(sides)).toBe('the left leg over the right leg');
  expect(estimateWords(compared({ differs: 'cannot_tell', greater: null }))).toBe('1.2 (−0.5 to 2.5)');
});
