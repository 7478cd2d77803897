import { QUESTIONNAIRES } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  bestTotal,
  emptyTotal,
  nextTotal,
  questionnaireOf,
  totalDraftOf,
  totalOf,
  totalProblems,
} from '../../../apps/dashboard/src/course/total-draft.ts';

const on = '2026-03-04';
const draft = { questionnaire: 'visa-a', languageVersion: 'de-CH 2019', total: '64', side: null };

test('what is missing is named at its field', () => {
  expect(totalProblems(emptyTotal)).toEqual({
    questionnaire: 'which-missing',
    total: 'total-missing',
    languageVersion: 'version-missing',
  });
  expect(totalProblems(draft)).toEqual({});
});

test.each(QUESTIONNAIRES.map(({ id, range }) => [id, ...range] as const))(
  '%s: a total outside %d to %d is refused, and both ends are totals',
  (questionnaire, least, most) => {
    const problem = (total: string) => totalProblems({ ...draft, questionnaire, total }).total;
    expect([problem(String(least)), problem(String(most))]).toEqual([undefined, undefined]);
    expect(problem(String(most + 0.5))).toBe('total-range');
    // a sign is no part of a total
    expect(problem('-1')).toBe('total-range');
  },
);

test('of a questionnaire that is not known here any number is kept', () => {
  expect(totalProblems({ ...draft, questionnaire: 'tendon-8', total: '1400' })).toEqual({});
  expect(totalProblems({ ...draft, questionnaire: 'tendon-8', total: 'many' })).toEqual({ total: 'total-missing' });
});

test('a total is typed with a point or a comma, and the version without spaces around it', () => {
  expect(totalOf({ ...draft, total: '64,5', languageVersion: ' de-CH 2019 ' }, on)).toEqual({
    questionnaire: 'visa-a',
    languageVersion: 'de-CH 2019',
    total: 64.5,
    on,
    side: null,
  });
});

test('a new total takes over everything of the one before but the total', () => {
  const before = { questionnaire: 'lefs', languageVersion: 'fr', total: 40, on, side: 'right' } as const;
  expect(nextTotal(before)).toEqual({ ...totalDraftOf(before), total: '' });
  expect(nextTotal(undefined)).toEqual(emptyTotal);
});

test('the better end is told, whichever it is', () => {
  expect(['visa-a', 'tendins-a', 'lefs'].map((id) => bestTotal(questionnaireOf(id)!))).toEqual([100, 0, 80]);
});
