import { LIVE_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { linkWords } from '../../../apps/dashboard/src/live/link-words.ts';

test('a lost connection says for how long it is sought, and its return what is missing', () => {
  expect(linkWords({ state: 'lost', reason: 'away' })).toContain('up to 10 s');
  expect(linkWords({ state: 'back', afterS: 2.34, lostCount: 45 })).toBe(
    'Samples come again after 2.3 s. Missing: 45; they stay a hole.',
  );
  expect(linkWords({ state: 'back', afterS: 2.34, lostCount: null })).toContain('Nobody can tell how many');
  expect(linkWords({ state: 'disturbed', reason: 'FramingError' })).toBe(LIVE_WORDS.disturbed.text);
});

test('attempts say nothing new', () => {
  expect(linkWords({ state: 'waiting', attempt: 1, inS: 0.5 })).toBeUndefined();
  expect(linkWords({ state: 'trying', attempt: 1 })).toBeUndefined();
});
