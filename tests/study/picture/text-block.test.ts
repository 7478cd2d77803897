import { expect, test } from 'vitest';
import { brokenLines, lettersIn, textBlock } from '../../../packages/study/src/picture/text-block.ts';

test('a text is broken between words, and a longer word stands alone', () => {
  expect(brokenLines('of both legs, unimaginably long', 9)).toEqual(['of both', 'legs,', 'unimaginably', 'long']);
  expect(brokenLines('', 9)).toEqual([]);
});

test('lines stand under each other, and the next one below them', () => {
  const { parts, next } = textBlock('one two three', { x: 8, y: 20, width: 5 * 16 * 0.52, look: 'word', size: 16 });
  expect(parts).toHaveLength(3);
  expect([parts[1].includes('y="42"'), next]).toEqual([true, 86]);
  expect(lettersIn(1, 16)).toBe(1);
});
