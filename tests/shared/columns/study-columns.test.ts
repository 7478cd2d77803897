import {
  PERSON_COLUMNS,
  PRACTICE_COLUMNS,
  REACH_COLUMNS,
  RECOUNT_COLUMNS,
  SAMPLE_COLUMNS,
  TOTAL_COLUMNS,
  TRIAL_FRAME_COLUMNS,
  TRIAL_KEY_COLUMNS,
  VISIT_COLUMNS,
} from '@surae/shared';
import { expect, test } from 'vitest';

const LISTS = {
  PERSON_COLUMNS,
  PRACTICE_COLUMNS,
  REACH_COLUMNS,
  RECOUNT_COLUMNS,
  SAMPLE_COLUMNS,
  TOTAL_COLUMNS,
  TRIAL_FRAME_COLUMNS,
  TRIAL_KEY_COLUMNS,
  VISIT_COLUMNS,
};

test.each(Object.entries(LISTS))('%s: a key stands once and every column is explained', (_, columns) => {
  const keys = columns.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  expect(columns.filter(({ description }) => description === '')).toEqual([]);
});

test('what a trial is told by is the same in every table', () => {
  const frame = TRIAL_FRAME_COLUMNS.map(({ key }) => key);
  expect(TRIAL_KEY_COLUMNS.map(({ key }) => key).filter((key) => !frame.includes(key))).toEqual([]);
});

test('both legs of a visit have the same columns', () => {
  const of = (side: string): string[] =>
    VISIT_COLUMNS.filter(({ key }) => key.startsWith(`${side}.`)).map(({ key }) => key.slice(side.length));
  expect(of('left')).toEqual(of('right'));
  expect(of('left')).toHaveLength(12);
});
