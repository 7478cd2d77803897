import { expect, test } from 'vitest';
import { evidenceWords } from '../../apps/cli/src/guess-words.ts';

test('evidence is told in its sentence, with its figures', () => {
  expect(evidenceWords({ code: 'rate-told', figures: { line: 3, rate: 100 } })).toBe('Line 3 says 100 Hz.');
  expect(() => evidenceWords({ code: 'no-such', figures: {} })).toThrow(/No sentence/);
});
