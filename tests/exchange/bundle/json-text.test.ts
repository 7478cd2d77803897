import { jsonText } from '@surae/exchange';
import { expect, test } from 'vitest';

test('one member a line, and a line at the end', () => {
  expect(jsonText({ a: [1], b: null })).toBe('{\n "a": [\n  1\n ],\n "b": null\n}\n');
});
