import { expect, test } from 'vitest';
import { newsWords, tallyWords } from '../../../apps/dashboard/src/study/recount-news.ts';

const mark = (place: number, verdict: 'yes' | 'no' | 'cannot_tell') => ({
  repetition: place,
  place,
  atS: 2 * place,
  verdict,
});

test('what was put is said with its number, its time and its verdict', () => {
  expect(newsWords({ news: { code: 'put', mark: mark(3, 'cannot_tell') } })).toBe('Mark 3 at 6.00 s: cannot tell.');
  expect(newsWords({ news: { code: 'taken', mark: mark(1, 'yes') } })).toBe('The mark at 2.00 s is taken away.');
  expect(newsWords({ news: { code: 'counted', count: 7 } })).toBe('The recording before: 7 count.');
  expect(newsWords({ news: { code: 'no-peak' } })).toBe('There is no further peak.');
  expect(newsWords({ news: { code: 'item' } })).toBe('');
});

test('how many are marked and count is said, and what cannot be told is not hidden', () => {
  const marks = [mark(1, 'yes'), mark(2, 'no'), mark(3, 'cannot_tell')];
  const state = { marks, counting: 1, confirmed: null, isFromTable: false };
  expect(tallyWords(state)).toBe('3 marked: 1 count, 1 cannot be told.');
  expect(tallyWords({ ...state, marks: marks.slice(0, 2), confirmed: 1 })).toBe('Done: 1. 2 marked: 1 count.');
  expect(tallyWords({ ...state, marks: [], confirmed: 12, isFromTable: true })).toMatch(
    /^Filled in as a table: 12 count/,
  );
  expect(tallyWords({ ...state, marks: [], isFromTable: true })).toMatch(/without a count/);
});
