import type { ColumnValue } from '@surae/analysis';
import { rounded } from './rounded.ts';

/** A value as it stands in one cell of a table: nothing where nothing was measured, words parted by semicolons. */
export function cellText(value: ColumnValue): string {
  if (value === null) return '';
  if (typeof value === 'object') return value.join('; ');
  return String(rounded(value));
}
