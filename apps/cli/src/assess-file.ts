import {
  assessListed,
  type BesideProtocols,
  type GivenRecipe,
  type GivenSettings,
  givenRecipe,
  hashedAs,
  type Outcome,
  reasonOf,
  recipeItem,
  refused,
  type WorkItem,
} from '@surae/study';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { readByRecipe } from './recipe-file.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { Vary } from './vary.ts';
import { ZipFault } from './zip-fault.ts';

/** One recording from its bytes to its report. Whatever goes wrong becomes a refusal of this file alone. */
export async function assessFile(
  item: WorkItem,
  given: GivenSettings,
  io: Pick<Io, 'readFile'> & Partial<Pick<Io, 'readChunks'>>,
  vary?: Vary,
  recipe?: GivenRecipe,
): Promise<Outcome> {
  if (item.refusal !== undefined) return refused(item, item.refusal, null);
  const beside: BesideProtocols = (protocol) => variedProtocols(protocol, vary);
  const by = item.recipe === undefined ? recipe : givenRecipe(item.recipe);
  if (by !== undefined) return assessByRecipe(item, given, io as Io, by, beside);
  let bytes: Uint8Array;
  try {
    bytes = await io.readFile(item.path);
  } catch (error) {
    return refused(item, `${item.file}: ${readFault(error)}`, null);
  }
  return assessListed(item, hashedAs(bytes, sha256(bytes)), given, beside);
}

/** The same of a file that is read by a recipe, a piece at a time. */
async function assessByRecipe(
  item: WorkItem,
  given: GivenSettings,
  io: Pick<Io, 'readChunks'>,
  recipe: GivenRecipe,
  beside: BesideProtocols,
): Promise<Outcome> {
  try {
    const { recording } = await readByRecipe(item, recipe, io);
    const told = recipeItem(item, recording);
    if ('refusal' in told) return refused(item, `${item.file}: ${told.refusal}`, recording.source.sha256);
    return assessListed(told.item, told.recording, given, beside);
  } catch (error) {
    if (error instanceof ZipFault || (error instanceof Error && 'syscall' in error))
      return refused(item, `${item.file}: ${readFault(error)}`, null);
    return refused(item, reasonOf(item, error), null);
  }
}
