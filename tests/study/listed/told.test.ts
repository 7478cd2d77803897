import { expect, test } from 'vitest';
import { NOTHING_TOLD, readTold, toldBy } from '../../../packages/study/src/listed/told.ts';
import { TOLD_COLUMNS, type ToldColumn } from '../../../packages/study/src/listed/told-columns.ts';

test('words, answers, numbers and days become what they say; blanks and capitals do not matter', () => {
  const told = readTold({
    end_reason: ' Fatigue ',
    pain_sharp: 'No',
    exertion: '7.5',
    tests_before: '0',
    date: '1970-01-11',
    flare: 'yes',
    mood: 'good',
  });
  expect(told).toEqual({
    ...NOTHING_TOLD,
    end_reason: 'fatigue',
    pain_sharp: false,
    exertion: 7.5,
    tests_before: 0,
    date: 10,
    flare: true,
  });
});

test('an empty cell, or one of blanks, is not known: null and never zero or no', () => {
  expect(readTold({ exertion: '', flare: '  ' })).toEqual(NOTHING_TOLD);
  expect(new Set(Object.values(NOTHING_TOLD))).toEqual(new Set([null]));
  expect(Object.keys(NOTHING_TOLD)).toEqual(Object.keys(TOLD_COLUMNS));
});

test.each([
  ['end_reason', 'tired', 'one of fatigue, pain, '],
  ['end_reason', 'constructor', 'one of fatigue, pain, '],
  ['flare', 'maybe', 'yes, no, or nothing'],
  ['exertion', '11', 'a number of 0 to 10, or nothing'],
  ['exertion', '-1', 'a number of 0 to 10, or nothing'],
  ['exertion', '7,5', 'a number of 0 to 10, or nothing'],
  ['exertion', 'NaN', 'a number of 0 to 10, or nothing'],
  ['tests_before', '1.5', 'a whole number of 0 to 1000 tests, or nothing'],
  ['date', '1.3.2026', 'a day such as 2026-03-01, or nothing'],
  ['date', '2026-02-30', 'a day such as 2026-03-01, or nothing'],
  ['date', '2026-13-01', 'a day such as 2026-03-01, or nothing'],
])('the column %s does not take "%s", and says what it takes', (column, actual, expected) => {
  expect(readTold({ [column]: actual })).toMatchObject({
    column,
    actual,
    expected: expect.stringContaining(expected) as string,
  });
  expect(toldBy({ [column]: actual })).toEqual(NOTHING_TOLD);
});

test('every word of every column is taken as it is written', () => {
  for (const [name, column] of Object.entries<ToldColumn>(TOLD_COLUMNS)) {
    if (column.kind !== 'word') continue;
    for (const word of column.words)
      expect(readTold({ [name]: word }), name).toEqual({ ...NOTHING_TOLD, [name]: word });
  }
});
