import { expect, test } from 'vitest';
import { splitFields } from '../../../packages/records/src/form/split-fields.ts';

test('fields stand between delimiters, and quotation marks hold one together', () => {
  expect(splitFields('a;b;;', ';')).toEqual(['a', 'b', '', '']);
  expect(splitFields('"a;b";c', ';')).toEqual(['a;b', 'c']);
  expect(splitFields('"say ""no""";', ';')).toEqual(['say "no"', '']);
  expect(splitFields(' "a" , b', ',')).toEqual(['a', 'b']);
  expect(splitFields('  1   2\t3 ', ' ')).toEqual(['1', '2', '3']);
  expect(splitFields('', ',')).toEqual(['']);
});

test('what quotation marks do not fit is not divided', () => {
  expect(splitFields('"a;b', ';')).toBeUndefined();
  expect(splitFields('"a"b;c', ';')).toBeUndefined();
});
