import { parseArgs } from 'node:util';
import type { AssessArguments } from '../assess-arguments.ts';
import { requireFittingOptions } from '../fitting-options.ts';
import { ABOUT_OPTIONS, givenAbout } from '../given-about.ts';
import { parsed } from '../parsed-options.ts';
import { readRecipeOptions } from '../recipe-arguments.ts';
import { UsageError } from '../usage-error.ts';
import { readVary } from '../vary.ts';
import { CLUSTER_OPTIONS, type ClusterArguments, runName, USUAL_RUN } from './cluster-arguments.ts';

/** Which recordings go into a database, with all that is to be made of them. */
export interface ScatterArguments
  extends ClusterArguments,
    Pick<AssessArguments, 'files' | 'manifest' | 'given' | 'settings' | 'vary' | 'recipe'> {
  readonly command: 'scatter';
  readonly run: string;
  /** whether the bytes go into the database too */
  readonly sendsBytes: boolean;
}

/**
 * What `surae scatter` is asked for; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readScatter(args: readonly string[]): ScatterArguments | undefined {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...CLUSTER_OPTIONS,
        ...ABOUT_OPTIONS,
        manifest: { type: 'string' },
        settings: { type: 'string' },
        vary: { type: 'string' },
        recipe: { type: 'string' },
        part: { type: 'string' },
        window: { type: 'string' },
        'rate-hz': { type: 'string' },
        'send-bytes': { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  const { manifest } = values;
  const [first] = positionals;
  if (manifest === undefined && first === undefined) {
    throw new UsageError('name at least one FILE, FOLDER or ZIP, or a list of files with --manifest');
  }
  if (manifest !== undefined && first !== undefined) {
    throw new UsageError(`name files or a manifest, not both: "${first}" came with --manifest`);
  }
  const given = givenAbout(values);
  if (manifest === undefined) requireFittingOptions(given, values.vary !== undefined);
  return {
    command: 'scatter',
    database: values.database,
    run: runName(values.run ?? USUAL_RUN),
    files: positionals,
    manifest,
    given,
    settings: values.settings,
    vary: values.vary === undefined ? undefined : readVary(values.vary),
    recipe: readRecipeOptions(values),
    sendsBytes: values['send-bytes'] === true,
  };
}
