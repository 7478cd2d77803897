import { expect, test } from 'vitest';
import { setOrigins, setOriginWords } from '../../../apps/dashboard/src/live/origin-words.ts';

test('every source of a set is asked for once, by a name of its own', () => {
  expect([...setOrigins].sort()).toEqual(Object.keys(setOriginWords).sort());
  expect(new Set(setOrigins.map((origin) => setOriginWords[origin].text)).size).toBe(setOrigins.length);
});
