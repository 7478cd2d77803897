import type { DocumentQuery } from './record-store.ts';
import type { RowKeys } from './rows.ts';

/** One or several as a list; undefined stays undefined. */
export function asList(value: string | readonly string[] | undefined): readonly string[] | undefined {
  return typeof value === 'string' ? [value] : value;
}

/** Whether a row fits everything that a query tells. */
export function fitsQuery({ kind, about, whose }: DocumentQuery): (row: RowKeys) => boolean {
  const kinds = asList(kind);
  const abouts = asList(about);
  const isKind = kinds === undefined ? undefined : new Set(kinds);
  const isAbout = abouts === undefined ? undefined : new Set(abouts);
  return (row) =>
    (isKind === undefined || isKind.has(row.kind)) &&
    (isAbout === undefined || (row.about !== null && isAbout.has(row.about))) &&
    (whose === undefined || row.whose === whose);
}
