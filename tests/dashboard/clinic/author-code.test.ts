import { expect, test } from 'vitest';
import { authorFrom, keepAuthor, keptAuthor } from '../../../apps/dashboard/src/clinic/author-code.ts';
import { MapMemory } from '../../support/device-memory.ts';

test.each([
  [' RN ', 'RN'],
  ['A17', 'A17'],
  ['R.N.', 'R.N.'],
  ['Zoë-2', 'Zoë-2'],
  ['', undefined],
  ['.RN', undefined],
  ['Robin Novak', undefined],
  ['abcdefghijkl', 'abcdefghijkl'],
  ['abcdefghijklm', undefined],
  ['<b>', undefined],
])('%j is the code %j', (typed, code) => {
  expect(authorFrom(typed)).toBe(code);
});

test('a device keeps the code, and one that was spoilt counts as not told', () => {
  const memory = new MapMemory();
  expect(keptAuthor(memory)).toBeNull();
  keepAuthor(memory, 'RN');
  expect(keptAuthor(memory)).toBe('RN');
  for (const key of memory.kept.keys()) memory.setItem(key, 'no code at all');
  expect(keptAuthor(memory)).toBeNull();
});
