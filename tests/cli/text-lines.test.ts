import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelled, wrapped } from '../../apps/cli/src/text-lines.ts';
import { runs } from '../support/runs.ts';

test('text is broken at blanks, a line may be exactly full', () => {
  expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
  expect(wrapped('one two three', 6)).toEqual(['one', 'two', 'three']);
  expect(wrapped('  ', 7)).toEqual([]);
});

test('a word that is too long stands alone and whole', () => {
  expect(wrapped('a incomprehensible b', 5)).toEqual(['a', 'incomprehensible', 'b']);
});

test('a label stands once, and the text beside it keeps to its column', () => {
  expect(labelled('  why', 'one two three', 8, 15)).toEqual(['  why   one two', '        three']);
});

test('no word is lost, no line is too wide, and no line has room for the next word', () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { maxLength: 30 });
  fc.assert(
    fc.property(words, fc.integer({ min: 9, max: 40 }), (all, width) => {
      const lines = wrapped(all.join(' '), width);
      expect(lines.flatMap((line) => line.split(' '))).toEqual(all);
      for (const [at, line] of lines.entries()) {
        expect(line.length).toBeLessThanOrEqual(width);
        const next = lines[at + 1]?.split(' ')[0];
        if (next !== undefined) expect(line.length + 1 + next.length).toBeGreaterThan(width);
      }
    }),
    runs(100, 1000),
  );
});
