import { parseArgs } from 'node:util';
import { parsed } from '../parsed-options.ts';
import { UsageError } from '../usage-error.ts';
import { wholeNumber } from '../whole-number.ts';
import { CLUSTER_OPTIONS, type ClusterArguments, runName } from './cluster-arguments.ts';

/** A folder that this machine sees under another name than the one where the list was made. */
export interface MovedFolder {
  readonly from: string;
  readonly to: string;
}

/** What a worker is to work on, and how. */
export interface WorkArguments extends ClusterArguments {
  readonly command: 'work';
  /** undefined: every run that something is left of */
  readonly run: string | undefined;
  /** how many recordings are assessed at once; undefined: as many as there are cores */
  readonly workers: number | undefined;
  /** heap of each; undefined: what Node gives */
  readonly memoryMb: number | undefined;
  readonly moved: readonly MovedFolder[];
  /** after which silence a worker is taken for lost [s] */
  readonly patienceS: number;
}

const PATIENCE_S = 30;

/**
 * What `surae work` is asked for; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be done
 */
export function readWork(args: readonly string[]): WorkArguments | undefined {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...CLUSTER_OPTIONS,
        workers: { type: 'string' },
        'memory-mb': { type: 'string' },
        moved: { type: 'string', multiple: true },
        patience: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return undefined;
  if (positionals[0] !== undefined) {
    throw new UsageError(`surae work takes its recordings from the database: "${positionals[0]}" says nothing here`);
  }
  const { run, workers, 'memory-mb': memoryMb, patience } = values;
  return {
    command: 'work',
    database: values.database,
    run: run === undefined ? undefined : runName(run),
    workers: workers === undefined ? undefined : wholeNumber('--workers', workers, 1, 512),
    memoryMb: memoryMb === undefined ? undefined : wholeNumber('--memory-mb', memoryMb, 64, 1_000_000),
    moved: (values.moved ?? []).map(movedFolder),
    patienceS: patience === undefined ? PATIENCE_S : wholeNumber('--patience', patience, 3, 3600),
  };
}

function movedFolder(text: string): MovedFolder {
  const found = /^([^=]+)=([^=]+)$/.exec(text);
  if (found === null) throw new UsageError(`--moved ${text}: expected FROM=TO, such as /data/study=/mnt/study`);
  const bare = (folder: string): string => folder.replace(/(?<=.)[\\/]+$/, '');
  return { from: bare(found[1]!), to: bare(found[2]!) };
}

/** Where this machine sees a path. */
export function movedPath(path: string, moved: readonly MovedFolder[]): string {
  for (const { from, to } of moved) {
    const rest = path.startsWith(from) ? path.slice(from.length) : undefined;
    if (rest === undefined) continue;
    if (rest === '' || /^[\\/]/.test(rest)) return to + rest;
    if (/[\\/]$/.test(from)) return `${to}/${rest}`;
  }
  return path;
}
