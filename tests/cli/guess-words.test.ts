import { expect, test } from 'vitest';
import { evidenceWords, lineWords } from '../../apps/cli/src/guess-words.ts';

test('line numbers are joined to runs, and more than can be listed is said', () => {
  expect(lineWords({ count: 4, lines: [3, 4, 5, 9] })).toBe('3-5, 9');
  expect(lineWords({ count: 2, lines: [7, 7] })).toBe('7');
  expect(lineWords({ count: 300, lines: [1, 3] })).toBe('1, 3, ...');
});

test('evidence is told in its sentence, with its figures', () => {
  expect(evidenceWords({ code: 'rate-told', figures: { line: 3, rate: 100 } })).toBe('Line 3 says 100 Hz.');
  expect(() => evidenceWords({ code: 'no-such', figures: {} })).toThrow(/No sentence/);
});
