import { runLoad } from '@surae/guidance';
import { expect, test } from 'vitest';

// light up to 1, medium 2 and 3, high from 4 on: Silbernagel & Crossley 2015 J Orthop Sports Phys Ther 45:876, from memory
test.each([
  [0, 'light'],
  [1, 'light'],
  [2, 'medium'],
  [3, 'medium'],
  [4, 'high'],
  [10, 'high'],
  [null, null],
])('pain of %s in a run: %s', (pain, load) => {
  expect(runLoad(pain)).toBe(load);
});
