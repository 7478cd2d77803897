import { parseRecipe, type Recipe, RecipeReader, type RecipeReading, RecordError } from '@surae/records';
import { type GivenRecipe, type ReadRecipe, readerOptions } from '@surae/study';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { UsageError } from './usage-error.ts';

/** The recipe in a file. @throws {@link UsageError} without which nothing can be done at all */
export function recipeIn(path: string, bytes: Uint8Array): Recipe {
  try {
    return parseRecipe(new TextDecoder().decode(bytes), path);
  } catch (error) {
    if (error instanceof RecordError) throw new UsageError(error.message);
    throw error;
  }
}

/** Reads the recipes that rows of a manifest name; what cannot be read is said. */
export function recipeReader(read: Io['readFile']): (path: string) => Promise<ReadRecipe> {
  return async (path) => {
    try {
      return await read(path);
    } catch (error) {
      return { fault: readFault(error) };
    }
  };
}

/** A file read by a recipe, chunk by chunk. @throws {@link RecordError} what the recipe does not know, with its place */
export async function readByRecipe(
  item: { readonly file: string; readonly path: string },
  given: GivenRecipe,
  io: Pick<Io, 'readChunks'>,
): Promise<RecipeReading> {
  const reader = new RecipeReader(given.recipe, readerOptions(item.file, given));
  for await (const chunk of io.readChunks(item.path)) reader.push(chunk);
  return reader.end();
}
