import type { AssessArguments } from './assess-arguments.ts';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import type { RunPlan, Want } from './run-plan.ts';

type PlanArguments = Pick<AssessArguments, 'settings' | 'recipe' | 'vary' | 'output' | 'lines'>;

function wantOf({ output, lines }: PlanArguments, { width, drawsBlocks }: Io): Want {
  if (lines !== undefined || output.kind === 'json') return { kind: 'json' };
  return output.kind === 'tables' ? { kind: 'rows' } : { kind: 'text', width, drawsBlocks };
}

/**
 * What holds for every recording of a run, with the files that the command line names.
 *
 * @throws {@link UsageError} when one of them cannot be read
 */
export async function runPlan(args: PlanArguments, carried: readonly string[], io: Io): Promise<RunPlan> {
  const { settings, recipe, vary } = args;
  return {
    settings: settings === undefined ? undefined : { path: settings, bytes: await readNamed(settings, io) },
    recipe:
      recipe === undefined
        ? undefined
        : {
            path: recipe.file,
            bytes: await readNamed(recipe.file, io),
            part: recipe.part,
            window: recipe.window,
            rateHz: recipe.rateHz,
          },
    vary,
    want: wantOf(args, io),
    carried,
  };
}
