import { csvText, csvwMetadata, jsonText, rounded, tableOf } from '@surae/exchange';
import type { StudyTable } from './study-table.ts';

/** A file that leaves, by its name and its text. */
export interface NamedText {
  readonly name: string;
  readonly text: string;
}

/**
 * A table as CSV and what tells of it, which says how it was made.
 *
 * @param made - one line: what made it, from what
 */
export function tableFiles(table: StudyTable, made: string): NamedText[] {
  const { columns, rows } = tableOf(table);
  const name = `${table.name}.csv`;
  const cut = rows.map((row) => rounded(row) as typeof row);
  const metadata = JSON.parse(csvwMetadata(table, [name])) as Record<string, unknown>;
  const keys = columns.map(({ key }) => key);
  return [
    { name, text: csvText(keys, cut) },
    { name: `${name}-metadata.json`, text: jsonText({ ...metadata, 'dc:provenance': made }) },
  ];
}
