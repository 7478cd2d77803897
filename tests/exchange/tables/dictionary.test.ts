import { dictionaryTable, SAMPLE_SHAPE } from '@surae/exchange';
import { expect, test } from 'vitest';

test('one row a column, with unit and description; words have no unit', () => {
  const { rows } = dictionaryTable([SAMPLE_SHAPE]);
  expect(rows).toHaveLength(SAMPLE_SHAPE.columns.length);
  expect(rows[0]).toEqual(['samples', 'trial', null, 'text', 'key of the trial', 'definition']);
  expect(rows[2]).toEqual([
    'samples',
    'time_s',
    's',
    'number',
    'time of the sample on the clock of the recording',
    'definition',
  ]);
});
