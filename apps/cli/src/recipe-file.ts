import { parseRecipe, type Recipe, RecipeReader, type RecipeReading, RecordError, type Window } from '@surae/records';
import type { Io } from './io.ts';
import { UsageError } from './usage-error.ts';

/** A recipe, and what was said about the files that it reads. */
export interface GivenRecipe {
  readonly recipe: Recipe;
  readonly part: string | undefined;
  readonly window: Window | 'all' | undefined;
  readonly rateHz: number | undefined;
}

/** The recipe in a file. @throws {@link UsageError} without which nothing can be done at all */
export function recipeIn(path: string, bytes: Uint8Array): Recipe {
  try {
    return parseRecipe(new TextDecoder().decode(bytes), path);
  } catch (error) {
    if (error instanceof RecordError) throw new UsageError(error.message);
    throw error;
  }
}

/** A file read by a recipe, chunk by chunk. @throws {@link RecordError} what the recipe does not know, with its place */
export async function readByRecipe(
  item: { readonly file: string; readonly path: string },
  { recipe, part, window, rateHz }: GivenRecipe,
  io: Pick<Io, 'readChunks'>,
): Promise<RecipeReading> {
  const reader = new RecipeReader(recipe, {
    file: item.file,
    ...(part === undefined ? {} : { part }),
    ...(window === undefined ? {} : { window }),
    ...(rateHz === undefined ? {} : { rateHz }),
  });
  for await (const chunk of io.readChunks(item.path)) reader.push(chunk);
  return reader.end();
}
