import { columnValue } from '@surae/analysis';
import type { Column } from '@surae/shared';
import { rounded } from '../numbers.ts';
import type { Cell } from './table.ts';

/** The cells of one row: what the columns read of a source, cut to nine digits, several words parted by semicolons. */
export function columnCells(columns: readonly Column[], source: object): Cell[] {
  return columns.map((column) => {
    const value = columnValue(column, source);
    if (value === null) return null;
    if (typeof value === 'object') return value.join('; ');
    return typeof value === 'number' ? (rounded(value) as number) : value;
  });
}
