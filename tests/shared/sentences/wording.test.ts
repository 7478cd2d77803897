import { AXIS_WORDS, inWords, setWording } from '@surae/shared';
import { afterEach, expect, test } from 'vitest';

afterEach(() => setWording());

test('a text is English until a language is set, and English again once it is taken back', () => {
  expect(inWords('a.b', 'one')).toBe('one');
  setWording((id, text) => `${id}: ${text}`);
  expect(inWords('a.b', 'one')).toBe('a.b: one');
  setWording();
  expect(inWords('a.b', 'one')).toBe('one');
});

test('a sentence of the catalogue is asked for in the language in use each time it is read, by its id', () => {
  expect(AXIS_WORDS.left.text).toBe('Left');
  setWording((id, text) => `${text} (${id})`);
  expect(AXIS_WORDS.left.text).toBe('Left (sentence.screen.axis.left)');
  // a copy holds the text of its time
  expect({ ...AXIS_WORDS.left }.text).toBe('Left (sentence.screen.axis.left)');
});
