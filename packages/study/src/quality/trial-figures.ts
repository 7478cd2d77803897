import { columnValue } from '@surae/analysis';
import { OUTCOME_COLUMNS, outcomeColumn } from '../declared/outcome-columns.ts';
import type { StudyFile } from '../declared/study-document.ts';
import type { TrialFacts } from './trial-facts.ts';

/** Whether a recording is one of the study: its cells hold what the study says of each column. */
export function isOfStudy({ trials }: Pick<StudyFile, 'trials'>, { cells }: Pick<TrialFacts, 'cells'>): boolean {
  return trials.every(({ manifest, is }) => is.includes(cells[manifest] ?? ''));
}

/** An outcome of a trial; null where it was not measured, never zero for it. */
export function outcomeOf(
  test: StudyFile['test'],
  key: string,
  { figures }: Pick<TrialFacts, 'figures'>,
): number | null {
  const column = outcomeColumn(test, key);
  if (column === undefined || figures === null) return null;
  const value = columnValue(column, figures);
  return typeof value === 'number' ? value : null;
}

/** Words, flags as words, and the words of a list of one column of a trial; empty where there are none. */
export function wordsOf(
  test: StudyFile['test'],
  key: string,
  { figures }: Pick<TrialFacts, 'figures'>,
): readonly (string | boolean)[] {
  const column = outcomeColumn(test, key);
  if (column === undefined || figures === null) return [];
  const value = columnValue(column, figures);
  if (typeof value === 'string' || typeof value === 'boolean') return [value];
  return typeof value === 'object' && value !== null ? value : [];
}

type Fields = { [name: string]: unknown };

/**
 * What the columns of a test read of a report, and nothing else of it: the same figures under the same names, so that thousands of
 * trials can be kept at once.
 */
export function outcomeFigures(test: StudyFile['test'], figures: object): object {
  const kept: Fields = {};
  for (const { field } of OUTCOME_COLUMNS[test]) {
    let from: unknown = figures;
    let to = kept;
    const names = field.split('.');
    for (const [at, name] of names.entries()) {
      if (typeof from !== 'object' || from === null || !Object.hasOwn(from, name)) break;
      from = (from as Fields)[name];
      if (at < names.length - 1) to = (to[name] ??= {}) as Fields;
      else if (typeof from !== 'object' || Array.isArray(from)) to[name] = from;
    }
  }
  return kept;
}
