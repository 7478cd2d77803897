import { readWithRecipe } from '@surae/records';
import { recipeItem } from './recipe-item.ts';
import { type Refused, reasonOf, refused } from './refused.ts';
import { givenRecipe, readerOptions } from './row-recipe.ts';
import { hashedAs, type Source } from './source-of.ts';
import type { WorkItem } from './work-list.ts';

/** What is assessed of a recording, with what its recipe says of it told to the work; or why there is nothing. */
export function listedSource(
  item: WorkItem,
  bytes: Uint8Array,
  sha256: string,
): { readonly item: WorkItem; readonly source: Source } | Refused {
  if (item.recipe === undefined) return { item, source: hashedAs(bytes, sha256) };
  try {
    const given = givenRecipe(item.recipe);
    const { recording } = readWithRecipe(bytes, given.recipe, readerOptions(item.file, given));
    const told = recipeItem(item, recording);
    if ('refusal' in told) return refused(item, `${item.file}: ${told.refusal}`, sha256);
    return { item: told.item, source: told.recording };
  } catch (error) {
    return refused(item, reasonOf(item, error), sha256);
  }
}
