import type { Cell, TableShape } from '@surae/exchange';

/** A table of results: the name of its file as text, and its columns. */
export type ResultTable = TableShape & { readonly name: `${string}.csv` };

/** Rows by the name of their table. */
export type Rows = Readonly<Record<string, readonly (readonly Cell[])[]>>;

/** A column of words. */
export function word(key: string, description: string): ResultTable['columns'][number] {
  return { key, unit: '1', kind: 'text', description };
}
