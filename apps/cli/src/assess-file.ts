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
  type Source,
  type WorkItem,
} from '@surae/study';
import { sha256 } from './fingerprints.ts';
import type { Io } from './io.ts';
import type { LargeFile } from './large-file.ts';
import { readFault } from './read-fault.ts';
import { readByRecipe } from './recipe-file.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { Vary } from './vary.ts';
import { ZipFault } from './zip-fault.ts';

/** How the bytes of a recording come in. */
export type RecordingFiles = Pick<Io, 'readFile'> &
  Partial<Pick<Io, 'readChunks'>> & {
    /** a large file that two threads read; undefined where there is none to spare, or the file is not large */
    readonly readLarge?: (path: string) => Promise<LargeFile | undefined>;
  };

/** One recording from its bytes to its report. Whatever goes wrong becomes a refusal of this file alone. */
export async function assessFile(
  item: WorkItem,
  given: GivenSettings,
  io: RecordingFiles,
  vary?: Vary,
  recipe?: GivenRecipe,
): Promise<Outcome> {
  if (item.refusal !== undefined) return refused(item, item.refusal, null);
  const beside: BesideProtocols = (protocol) => variedProtocols(protocol, vary);
  const by = item.recipe === undefined ? recipe : givenRecipe(item.recipe);
  if (by !== undefined) return assessByRecipe(item, given, io as Io, by, beside);
  let large: LargeFile | undefined;
  let source: Source;
  try {
    large = await io.readLarge?.(item.path);
    source = large?.source ?? (await hashedFile(item.path, io));
  } catch (error) {
    return refused(item, `${item.file}: ${readFault(error)}`, null);
  }
  try {
    return assessListed(item, source, given, beside, large?.beside);
  } finally {
    await large?.close();
  }
}

async function hashedFile(path: string, io: Pick<Io, 'readFile'>): Promise<Source> {
  const bytes = await io.readFile(path);
  return hashedAs(bytes, sha256(bytes));
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
