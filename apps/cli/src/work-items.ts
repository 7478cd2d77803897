import { type WorkItem, withRecipes } from '@surae/study';
import type { AssessArguments } from './assess-arguments.ts';
import { foundFiles, passedOverLine } from './found-files.ts';
import type { Io } from './io.ts';
import { manifestItems } from './manifest.ts';
import { readNamed } from './read-named.ts';
import { recipeReader } from './recipe-file.ts';

/** The recordings that a command line names, in their order; what was passed over is said. */
export async function workItems(
  args: Pick<AssessArguments, 'manifest' | 'files' | 'given'>,
  io: Io,
): Promise<WorkItem[]> {
  if (args.manifest !== undefined) {
    const bytes = await readNamed(args.manifest, io);
    return withRecipes(manifestItems(args.manifest, bytes, args.given), recipeReader(io.readFile));
  }
  const found = await foundFiles(args.files, io);
  io.writeError(passedOverLine(found));
  const carried = {};
  return found.files.map(({ path, refusal }) => ({ file: path, path, about: args.given, carried, refusal }));
}
