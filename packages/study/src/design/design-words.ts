import { decimalsFor, plain } from '../picture/svg-page.ts';
import type { DesignAnswer, DesignCase, DesignNeed } from './design-answer.ts';
import type { DesignQuestion } from './design-question.ts';

/** What each case is called beside its line and in its row. */
export const CASE_WORDS: Readonly<Record<DesignCase, string>> = {
  expected: 'as expected',
  fewest: 'at best',
  most: 'at worst',
};

/** What is counted, in one and in several. */
const COUNTED: Readonly<Record<DesignQuestion['counts'], readonly [string, string]>> = {
  'people-each': ['in each group', 'in each group'],
  people: ['person', 'people'],
  tests: ['test at each visit', 'tests at each visit'],
};

/** What numbers attain, as an axis is named. */
export const ATTAINED_WORDS: Readonly<Record<DesignQuestion['attains'], string>> = {
  power: 'probability of finding it',
  'half-width': 'half width of the interval',
  width: 'width of the interval',
  'share-above': 'upper bound above the estimate, as a share of it',
  'detectable-change': 'detectable change in one person',
};

/** What the other axis counts. */
export const COUNT_WORDS: Readonly<Record<DesignQuestion['counts'], string>> = {
  'people-each': 'people in each group',
  people: 'people',
  tests: 'tests at each visit, of which the mean is taken',
};

/** A number of people as it is read: `45 in each group`; beyond what any study has it says so. */
export function needWords({ count }: DesignNeed, { counts }: DesignQuestion): string {
  const [one, several] = COUNTED[counts];
  return count === null ? `more than 100000 ${several}` : `${count} ${count === 1 ? one : several}`;
}

/** Whether anything that was told may lie elsewhere. */
export function isRanged({ singles }: DesignAnswer): boolean {
  return singles.length > 0;
}

/** The answer in one sentence, with the range that what is not known leaves. */
export function answerWords(answer: DesignAnswer): string {
  const { cases, request } = answer;
  const { question } = request;
  const expected = needWords(cases.expected, question);
  const begun = cases.expected.recruited;
  const lost = (cases.expected.values['drop-out'] ?? 0) > 0 || question.counts === 'people-each';
  const all = lost && begun !== null ? `, ${begun} to begin with` : '';
  if (!isRanged(answer)) return `${expected}${all}`;
  const [fewest, most] = [cases.fewest, cases.most].map(({ count }) => count ?? 'more than 100000');
  return `${expected}${all}; from ${fewest} to ${most}, as what is not known comes out`;
}

/** What a number attains, with the digits that it deserves. */
export function attainedWords(value: number, { attains }: DesignQuestion): string {
  return attains === 'half-width' || attains === 'detectable-change'
    ? plain(value, decimalsFor(value))
    : plain(value, 2);
}
