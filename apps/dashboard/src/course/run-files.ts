import type { Entry, Run } from '@surae/casebook';
import type { TakenRunFile } from '../runs/run-file-lines.ts';

/** The files that runs were read from, by hash and day; runs that were written down by hand have none. */
export function runFilesOf(runs: readonly Entry<Run>[]): readonly TakenRunFile[] {
  return runs.flatMap(({ body: { fileSha256, on } }) => (fileSha256 === undefined ? [] : [{ fileSha256, day: on }]));
}
