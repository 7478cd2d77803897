import { expect, test } from 'vitest';
import { fill } from '../../../apps/dashboard/src/words/fill.ts';

test('each blank takes the value of its name, as often as it stands there', () => {
  expect(fill({ text: '{a} of {b}, {a}' }, { a: 2, b: 'seven' })).toBe('2 of seven, 2');
});

test('a sentence without blanks stays as it is, and a value too many does no harm', () => {
  expect(fill({ text: 'as it is' })).toBe('as it is');
  expect(fill({ text: 'as it is' }, { a: 1 })).toBe('as it is');
});

test('zero and an empty text are values', () => {
  expect(fill({ text: '[{a}{b}]' }, { a: 0, b: '' })).toBe('[0]');
});

test('a blank without a value is an error that names it', () => {
  expect(() => fill({ text: 'at {place}' }, { plaice: 1 })).toThrow(/\{place\}/);
});

test('a value that looks like a blank is not filled again', () => {
  expect(fill({ text: '{a} {b}' }, { a: '{b}', b: 'x' })).toBe('{b} x');
});
