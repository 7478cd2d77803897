import { decimal } from '../numbers.ts';
import { csvText } from './csv-text.ts';
import { guarded } from './guarded-text.ts';
import type { Cell, Table } from './table.ts';

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return decimal(cell);
  return typeof cell === 'string' ? guarded(cell) : String(cell);
}

/**
 * A table as comma-separated text. Empty is not measured and zero is zero; a text that a spreadsheet would run has a guard
 * before it, which the metadata tell of.
 */
export function writeCsvTable({ columns, rows }: Table): string {
  return csvText(
    columns.map(({ key }) => key),
    rows.map((row) => row.map(cellText)),
  );
}
