import { aboutText } from '@surae/exchange';
import { expect, test } from 'vitest';

test('it says whether people are named, and what the scope is', () => {
  expect(aboutText(false, true)).toContain('This bundle names people.');
  expect(aboutText(true, false)).toContain('De-identified');
  expect(aboutText(true, false)).not.toContain('samples/');
  for (const text of [aboutText(true, true), aboutText(false, false)]) {
    expect(text).toContain("It supports a clinician's judgement. It is not a diagnosis.");
  }
});
