import { HELD_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { watchWords } from '../../../apps/dashboard/src/live/watch-words.ts';

const why = (error: Error): string => `Because: ${error.message}.`;

test('every state has its sentence', () => {
  expect(watchWords({ kind: 'waiting' }, undefined, why)).toBe(HELD_WORDS.waiting.text);
  expect(watchWords({ kind: 'streaming' }, undefined, why)).toBe(HELD_WORDS.streaming.text);
  expect(watchWords({ kind: 'silent', forS: 4.9 }, undefined, why)).toContain('no samples for 4 s');
  expect(watchWords({ kind: 'unread' }, undefined, why)).toBe(HELD_WORDS.unread.text);
  expect(watchWords({ kind: 'seeking', attempt: 0 }, undefined, why)).toBe(HELD_WORDS.lost.text);
  expect(watchWords({ kind: 'seeking', attempt: 3 }, undefined, why)).toContain('attempt 3');
  expect(watchWords({ kind: 'over', error: new Error('away') }, undefined, why)).toBe(
    'No more samples. Because: away.',
  );
});

test('after a broken connection it goes on to say what is missing', () => {
  const back = { state: 'back', afterS: 2, lostCount: 7 } as const;
  expect(watchWords({ kind: 'streaming' }, back, why)).toBe('Connected again after 2.0 s. Missing meanwhile: 7.');
  expect(watchWords({ kind: 'streaming' }, { ...back, lostCount: null }, why)).toContain('Nobody can tell');
});
