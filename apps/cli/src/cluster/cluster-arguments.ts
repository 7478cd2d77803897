import { UsageError } from '../usage-error.ts';

/** Options that every command of a run in a database has. */
export const CLUSTER_OPTIONS = {
  database: { type: 'string' },
  run: { type: 'string' },
} as const;

/** The run where no name is given. */
export const USUAL_RUN = 'run';

/** What holds for every command of a run in a database. */
export interface ClusterArguments {
  /** as it came; may hold a password */
  readonly database: string | undefined;
}

/** The name of a run. @throws {@link UsageError} where it is none */
export function runName(name: string): string {
  if (!/^[A-Za-z0-9][A-Za-z0-9._-]{0,59}$/.test(name)) {
    throw new UsageError(`--run ${name}: expected up to 60 letters, digits, points, dashes or underscores`);
  }
  return name;
}
