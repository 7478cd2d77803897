import { expect, test } from 'vitest';
import { sortChosen } from '../../../apps/dashboard/src/import/chosen-files.ts';

const file = (name: string, text: string): File => new File([text], name);
const table = file('set.csv', 'time [s],force [N]\n0,1\n');
const recipe = file('set.recipe.json', '{}');

test('a table and a recipe are told apart in either order, and by what they begin with where the name says nothing', async () => {
  expect(await sortChosen([])).toEqual({});
  expect(await sortChosen([table])).toEqual({ table });
  expect(await sortChosen([recipe, table])).toEqual({ table, recipe });
  const renamed = file('recipe.txt', '\u{feff}\n  {"kind": "surae-recipe"}');
  expect(await sortChosen([table, renamed])).toEqual({ table, recipe: renamed });
  // what is called a recipe is refused as one, and not looked at as a table
  const bad = file('notes.JSON', 'once upon a time');
  expect(await sortChosen([bad])).toEqual({ recipe: bad });
});

test('of two alike none is taken', async () => {
  expect(await sortChosen([table, file('other.csv', '1,2'), recipe])).toBe('several-tables');
  expect(await sortChosen([recipe, file('other.json', '{}'), table])).toBe('several-recipes');
});
