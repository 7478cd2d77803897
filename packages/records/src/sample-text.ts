import { guardedNote } from './guarded-text.ts';

/**
 * Samples as text under our documented header: notes as comments, one line each, then the names, then the rows. Cells are
 * numbers and names are ours, so that nothing in them needs quotes.
 */
export function sampleText(
  notes: readonly string[],
  names: readonly string[],
  rows: Iterable<readonly string[]>,
): string {
  const lines = notes.flatMap((note) => note.split(/\r\n|\r|\n/)).map((note) => `# ${guardedNote(note)}`.trimEnd());
  lines.push(names.join(','));
  for (const row of rows) lines.push(row.join(','));
  return `${lines.join('\n')}\n`;
}
