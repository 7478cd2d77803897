import { expect, test } from 'vitest';
import { qualityRows } from '../../../packages/study/src/quality/quality-rows.ts';
import { qualityTable } from '../../../packages/study/src/quality/quality-table.ts';
import { declaredStudy } from '../../support/declared-study.ts';
import { studyTrial } from '../../support/study-trials.ts';

test('a row for each trial under columns that each stand once, in the order that the trials came in', () => {
  const study = declaredStudy();
  const trials = [
    studyTrial('b.csv', { person: 'p2', arm: 'walking', visit: '1' }, null, { refusal: 'no table', figures: null }),
    studyTrial('a.csv', { person: 'p1', arm: 'cycling' }, 12, { sameAs: 'b.csv' }),
  ];
  const { columns, rows } = qualityTable(study, qualityRows(study, trials, new Map()));
  const keys = columns.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  expect(rows.every((row) => row.length === keys.length)).toBe(true);
  const cell = (row: number, key: string): unknown => rows[row][keys.indexOf(key)];
  expect(keys.slice(0, 5)).toEqual(['file', 'person', 'visit', 'side', 'arm']);
  expect([cell(0, 'file'), cell(0, 'visit'), cell(0, 'side'), cell(0, 'refusal')]).toEqual([
    'b.csv',
    '1',
    null,
    'no table',
  ]);
  expect([cell(1, 'status'), cell(1, 'flags'), cell(1, 'same_as')]).toEqual(['to-decide', 'same-bytes', 'b.csv']);
  expect([cell(0, 'count.scored'), cell(1, 'count.scored')]).toEqual([null, 12]);
  expect(cell(0, 'not_measured')).toBe('count.scored; measures.peak_height_mm');
});
