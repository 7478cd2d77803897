import { csvText } from './csv-text.ts';
import type { Table } from './table.ts';

/** A table as comma-separated text, which the metadata beside it tell of. */
export function writeCsvTable({ columns, rows }: Table): string {
  return csvText(
    columns.map(({ key }) => key),
    rows,
  );
}
