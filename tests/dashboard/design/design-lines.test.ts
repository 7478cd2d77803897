import { designAnswer } from '@surae/study';
import { expect, test } from 'vitest';
import { answerLines, caseRows, inputName, neededWords } from '../../../apps/dashboard/src/design/design-lines.ts';
import { requestOf } from '../../support/told-design.ts';

const answer = (...[id, given]: Parameters<typeof requestOf>): ReturnType<typeof designAnswer> =>
  designAnswer(requestOf(id, given));

test('what is not known is told with the answer, and a wide range is said to be one', () => {
  const groups = answer('groups', { difference: [2, 3, 4], sd: [4, 5, 7], 'drop-out': 0.1 });
  expect(neededWords(groups.cases.expected, groups)).toBe('45 in each group');
  expect(answerLines(groups)).toEqual([
    '100 people to begin with in all, those who will drop out among them.',
    'From 17 to 194, as what is not known comes out.',
    'At worst it takes more than twice what is expected. A small study beforehand, or a larger one, is worth it.',
    'With that number the probability of finding it is 0.80.',
  ]);
});

test('where all is certain nothing is said of a range, and the table has one row', () => {
  const error = answer('error', { above: 0.3 });
  expect(answerLines(error)).toEqual([
    'With that number: How far the upper bound may lie above it, as a share of it 0.30.',
  ]);
  expect(caseRows(error)).toEqual([{ what: 'all as expected', need: '37 people', begun: '37' }]);
});

test('tests are counted without people to begin with', () => {
  const change = answer('change', { change: 4, sem: [2, 2.25, 3] });
  expect(caseRows(change).map(({ what, need, begun }) => [what, need, begun])).toEqual([
    ['all as expected', '3 tests at each visit', ''],
    ['all at the end that needs fewer', '2 tests at each visit', ''],
    ['all at the end that needs more', '5 tests at each visit', ''],
    ['Standard error of measurement: 2', '2 tests at each visit', ''],
    ['Standard error of measurement: 3', '5 tests at each visit', ''],
  ]);
});

test('a published formula stands beside the exact answer', () => {
  const icc = answer('icc', { width: 0.2, icc: 0.85 });
  expect(answerLines(icc).at(-1)).toBe('Bonett (2002), Stat Med 21:1331-1335 gives 35 as expected.');
});

test('beyond a hundred thousand no number is said', () => {
  const none = answer('groups', { difference: 0.001, sd: 5 });
  expect(neededWords(none.cases.expected, none)).toBe('more than 100,000 in each group');
  expect(answerLines(none)).toEqual([]);
});

test('two inputs that share their key with a question have their own names', () => {
  expect([inputName('icc'), inputName('change'), inputName('sd')]).toEqual([
    'Intraclass correlation',
    'Change in one person that is to be told from measurement error',
    'Standard deviation between people',
  ]);
});
