import { LETTER_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';

test('no sentence of a letter holds a number of its own but the level of an interval and the end of a scale', () => {
  for (const { id, text } of Object.values(LETTER_SENTENCES)) {
    expect(text.replace('95 % interval', '').replace('of 10', ''), id).not.toMatch(/\d/);
  }
});

test('words of a letter say nothing that the job forbids', () => {
  const all = Object.values(LETTER_SENTENCES)
    .map(({ text }) => text)
    .join(' ');
  expect(all).not.toMatch(/\b(?:deficit|weak|fails|healthy|injured|normal leg|significant|cleared|safe)\b/i);
});
