import { expect, test } from 'vitest';
import { isPlacement, isSide, PLACEMENTS, SIDES } from '../../../packages/study/src/listed/known-words.ts';

test('a word of the list is known, and only in its own list', () => {
  expect(PLACEMENTS.filter(isPlacement)).toEqual(['heel', 'foot', 'trunk', 'platform', 'hand']);
  expect(SIDES.filter(isSide)).toEqual(['left', 'right']);
  expect([...SIDES, 'Heel', '', 'foot '].filter(isPlacement)).toEqual([]);
  expect([...PLACEMENTS, 'Left', 'l', ''].filter(isSide)).toEqual([]);
});
