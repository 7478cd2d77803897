import { expect, test } from 'vitest';
import { readRecipeOptions } from '../../apps/cli/src/recipe-arguments.ts';

test('a recipe with the part, the stretch and the rate that are meant', () => {
  expect(readRecipeOptions({})).toBeUndefined();
  expect(readRecipeOptions({ recipe: 'r.json', part: '2', window: '120-180.5', 'rate-hz': '100' })).toEqual({
    file: 'r.json',
    part: '2',
    window: { fromS: 120, toS: 180.5 },
    rateHz: 100,
  });
  expect(readRecipeOptions({ recipe: 'r.json', window: 'all' })?.window).toBe('all');
});

test.each([
  [{ part: '2' }, /--part says something only with --recipe/],
  [{ window: '1-2' }, /--window says something only with --recipe/],
  [{ recipe: 'r', window: '20-10' }, /--window 20-10: expected seconds FROM-TO/],
  [{ recipe: 'r', window: 'x' }, /expected seconds FROM-TO/],
  [{ recipe: 'r', 'rate-hz': '5' }, /--rate-hz 5: expected 10 to 2000/],
  [{ recipe: '' }, /--recipe needs the name/],
])('%j is refused', (values, message) => {
  expect(() => readRecipeOptions(values)).toThrow(message);
});
