import { softwareName } from '../software.ts';
import { UsageError } from '../usage-error.ts';
import type { Cluster } from './cluster.ts';
import { rulesHash } from './rules-hash.ts';
import type { RunRecord } from './run-record.ts';

/** Characters of a hash that are said. */
const SAID = 12;

/** Why this software may not touch a run; undefined where it may. Results of two versions or of two sets of rules are never mixed. */
export function mismatchOf({
  name,
  software,
  rules,
}: Pick<RunRecord, 'name' | 'software' | 'rules'>): string | undefined {
  const here = softwareName();
  if (software !== here) return `the run ${name} is of ${software}, and this is ${here}: take the version of the run`;
  const own = rulesHash();
  if (rules === own) return undefined;
  return `the run ${name} is of other usual settings or protocols (${rules.slice(0, SAID)}, here ${own.slice(0, SAID)}), though ${here} made it: take the same build`;
}

/** The run of that name. @throws {@link UsageError} where there is none */
export async function namedRun({ store, words }: Cluster, name: string): Promise<RunRecord> {
  await store.check();
  const run = await store.run(name);
  if (run !== undefined) return run;
  const names = (await store.runs()).map((one) => one.name);
  throw new UsageError(
    `the database ${words} holds no run ${name}${names.length > 0 ? `, but ${names.join(', ')}` : ''}`,
  );
}
