import { makeRecipe, RecordError, type SurveyedTable } from '@surae/records';
import { foundFiles, passedOverLine } from './found-files.ts';
import type { Io } from './io.ts';
import type { LookArguments } from './look-arguments.ts';
import { lookJson } from './look-json.ts';
import { lookList } from './look-list.ts';
import { lookText } from './look-text.ts';
import { readFault } from './read-fault.ts';
import { surveyedFile } from './surveyed-file.ts';
import { UsageError } from './usage-error.ts';
import { ZipFault } from './zip-fault.ts';

/** Looks at one file after the other; only one is in memory at a time. */
export async function lookCommand(args: LookArguments, io: Io): Promise<number> {
  const { json, recipeOut, replace, list } = args;
  if (list !== undefined) return lookList(args, list, io);
  if (recipeOut !== undefined && !replace && io.exists(recipeOut)) {
    throw new UsageError(`${recipeOut} is there already: --replace replaces it`);
  }
  const found = await foundFiles(args.files, io);
  if (recipeOut !== undefined && found.files.length > 1) {
    throw new UsageError(`--recipe-out makes the recipe of one FILE: ${args.files[0]} holds ${found.files.length}`);
  }
  io.writeError(passedOverLine(found));
  const refusals: string[] = [];
  for (const [index, { path: file, refusal }] of found.files.entries()) {
    try {
      if (refusal !== undefined) throw new ZipFault(refusal.slice(file.length + 2));
      const table = await surveyedFile(file, args.answers, io);
      if (json) io.writeOut(`${JSON.stringify(lookJson(file, table.proposal))}\n`);
      else io.writeOut(`${index === 0 ? '' : '\n'}${lookText(file, table, io)}`);
      if (recipeOut !== undefined) writeRecipe(file, table, args, io);
    } catch (error) {
      const reason = reasonOf(file, error);
      refusals.push(reason);
      if (json) io.writeOut(`${JSON.stringify({ file, status: 'refused', reason })}\n`);
    }
  }
  for (const reason of refusals) io.writeError(`surae look: ${reason}\n`);
  return refusals.length === 0 ? 0 : 1;
}

function reasonOf(file: string, error: unknown): string {
  if (error instanceof RecordError) return error.message;
  if (error instanceof ZipFault || (error instanceof Error && 'code' in error)) return `${file}: ${readFault(error)}`;
  throw error;
}

/** Nothing is written while a question is open. */
function writeRecipe(
  file: string,
  { proposal }: SurveyedTable,
  { recipeOut, name, json }: LookArguments,
  io: Io,
): void {
  const recipe = makeRecipe(proposal, name ?? file.replace(/^.*[/\\]/, ''), file);
  io.writeFile(recipeOut!, `${JSON.stringify(recipe, null, 2)}\n`);
  if (!json)
    io.writeOut(
      `\nThe recipe is in ${recipeOut}.\nsurae assess --recipe ${recipeOut} FILE... reads files like this one.\n`,
    );
}
