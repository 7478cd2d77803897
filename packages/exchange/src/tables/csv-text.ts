import { guarded } from '@surae/records';
import { decimal } from '../numbers.ts';
import type { Cell } from './table.ts';

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function textOfCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return decimal(cell);
  return typeof cell === 'string' ? quoted(guarded(cell)) : String(cell);
}

/**
 * Comma-separated text by RFC 4180: quotes where they are needed, every line ended by CR LF. Empty is not measured and zero is
 * zero; a text that a spreadsheet would run, names of columns too, has a guard before it.
 */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return csvLines([header, ...rows]);
}

/** The same without a header: rows that are added to a text. */
export function csvLines(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(textOfCell).join(',')}\r\n`).join('');
}
