import type { StudyResults } from '@surae/study';
import { madeFiles, type ResultSource, type SavedFile } from './session-results.ts';

/** Folder of the tables and figures inside the zip. */
export const RESULTS_FOLDER = 'results';

/** Name of the zip of a study: its title, as far as a file can have it. */
export function zipName(title: string): string {
  const name = title.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-');
  return `${name.replaceAll(/^-|-$/g, '').slice(0, 60) || 'study'}.zip`;
}

/**
 * The files of the zip of what a study comes to: those that `surae study --out results` writes, and beside them the lists that were made
 * here and that the command in the record reads. Unpacked beside the study file it can be made again and checked.
 */
export function resultFiles(source: ResultSource, { outputs }: Pick<StudyResults, 'outputs'>): SavedFile[] {
  return [...madeFiles(source), ...outputs.map(({ name, text }) => ({ name: `${RESULTS_FOLDER}/${name}`, text }))];
}
