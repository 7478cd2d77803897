import { mediaType } from '@surae/exchange';
import { expect, test } from 'vitest';

test('media types by the ending of the name', () => {
  expect(mediaType('tables/people.csv')).toBe('text/csv');
  expect(mediaType('a.parquet')).toBe('application/vnd.apache.parquet');
  expect(mediaType('raw/a.bin')).toBe('application/octet-stream');
});
