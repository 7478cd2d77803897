import { parseArgs } from 'node:util';
import { type AssessArguments, chosenOutput, type Output } from '../assess-arguments.ts';
import { parsed } from '../parsed-options.ts';
import { UsageError } from '../usage-error.ts';
import { CLUSTER_OPTIONS, type ClusterArguments, runName, USUAL_RUN } from './cluster-arguments.ts';

/** What is done with a run that was scattered. */
export type GatherAct =
  | { readonly kind: 'write'; readonly output: Exclude<Output, { kind: 'text' }> }
  | { readonly kind: 'left'; readonly json: boolean }
  | { readonly kind: 'remove' };

/** What is asked of a run in a database. */
export interface GatherArguments extends ClusterArguments, Pick<AssessArguments, 'reliability'> {
  readonly command: 'gather';
  readonly run: string;
  readonly act: GatherAct;
}

/**
 * What `surae gather` is asked for; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readGather(args: readonly string[]): GatherArguments | undefined {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...CLUSTER_OPTIONS,
        json: { type: 'boolean' },
        csv: { type: 'string' },
        parquet: { type: 'string' },
        replace: { type: 'boolean' },
        reliability: { type: 'string' },
        'reliability-of': { type: 'string' },
        left: { type: 'boolean' },
        remove: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  if (positionals[0] !== undefined) {
    throw new UsageError(`surae gather takes its recordings from the database: "${positionals[0]}" says nothing here`);
  }
  const { reliability: file, 'reliability-of': of } = values;
  if (of !== undefined && file === undefined) {
    throw new UsageError('--reliability-of says something only with --reliability');
  }
  const act = gatherAct(values);
  if (file !== undefined && act.kind !== 'write') {
    throw new UsageError(`--reliability says nothing with --${act.kind}`);
  }
  return {
    command: 'gather',
    database: values.database,
    run: runName(values.run ?? USUAL_RUN),
    act,
    reliability: file === undefined ? undefined : { file, of },
  };
}

interface ActOptions {
  readonly json?: boolean;
  readonly csv?: string;
  readonly parquet?: string;
  readonly replace?: boolean;
  readonly left?: boolean;
  readonly remove?: boolean;
}

function gatherAct({ left, remove, ...values }: ActOptions): GatherAct {
  const alone = left === true ? 'left' : remove === true ? 'remove' : undefined;
  if (alone !== undefined) {
    const others = (['remove', 'csv', 'parquet', 'replace', 'json'] as const).filter((name) =>
      name === 'remove' ? left === true && remove === true : values[name] !== undefined,
    );
    const other = others.find((name) => !(alone === 'left' && name === 'json'));
    if (other !== undefined) throw new UsageError(`choose --${alone} or --${other}, not both`);
    return alone === 'left' ? { kind: 'left', json: values.json === true } : { kind: 'remove' };
  }
  const output = chosenOutput(values);
  if (output.kind === 'text') {
    throw new UsageError('say what to write with --csv, --parquet or --json; or --left, or --remove');
  }
  return { kind: 'write', output };
}
