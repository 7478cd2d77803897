import { type Recording, readRecording } from '@surae/records';
import { givenRecipe, recipeItem, type WorkItem } from '@surae/study';
import type { Io } from './io.ts';
import { readByRecipe } from './recipe-file.ts';

/**
 * The samples of a recording that was assessed, read once more as it was read then.
 *
 * @throws {@link RecordError} where it cannot be read any more
 */
export async function readAgain(item: WorkItem, io: Pick<Io, 'readFile' | 'readChunks'>): Promise<Recording> {
  if (item.recipe === undefined) return readRecording(await io.readFile(item.path), { file: item.file });
  const { recording } = await readByRecipe(item, givenRecipe(item.recipe), io);
  const told = recipeItem(item, recording);
  if ('refusal' in told) throw new Error(`${item.file}: ${told.refusal}`);
  return told.recording;
}
