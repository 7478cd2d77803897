import type { Column } from '@surae/shared';

/** A figure as it is handed over: null where nothing was measured. */
export type ColumnValue = number | string | boolean | readonly string[] | null;

/** Figures under their keys; a key with dots becomes levels. */
export interface NestedValues {
  [key: string]: ColumnValue | NestedValues;
}

/** The names that lead to the field of a column, which is asked for once a row. */
const paths = new WeakMap<Column, readonly string[]>();

function pathOf(column: Column): readonly string[] {
  const known = paths.get(column);
  if (known !== undefined) return known;
  const path = column.field.split('.');
  paths.set(column, path);
  return path;
}

function fieldOf(source: unknown, path: readonly string[]): unknown {
  let value = source;
  for (const name of path) {
    if (value === null || typeof value !== 'object') return null;
    value = (value as Readonly<Record<string, unknown>>)[name];
  }
  return value;
}

/**
 * Figure of one column.
 *
 * @param column - which field, and the factor to the unit of the column [-]
 * @param source - a report, or a repetition of one [-]
 * @returns the value; null where the source has none [unit of column]
 *
 * Source: definition
 */
export function columnValue(column: Column, source: object): ColumnValue {
  const value = fieldOf(source, pathOf(column));
  if (typeof value === 'number') return Number.isFinite(value) ? value * column.factor : null;
  if (column.kind === 'list') return Array.isArray(value) ? (value as readonly string[]) : null;
  return typeof value === 'string' || typeof value === 'boolean' ? value : null;
}

/**
 * Figures of all columns as they stand in JSON: the dots of a key are levels of nesting.
 *
 * @param columns - the list that JSON and CSV share [-]
 * @param source - a report, or a repetition of one [-]
 * @returns every key with its value, null where the source has none [-]
 *
 * Source: definition
 */
export function nestedValues(columns: readonly Column[], source: object): NestedValues {
  const result: NestedValues = {};
  for (const column of columns) {
    const names = column.key.split('.');
    const last = names.pop();
    let at = result;
    for (const name of names) {
      const inner = at[name] ?? {};
      at[name] = inner;
      at = inner as NestedValues;
    }
    if (last !== undefined) at[last] = columnValue(column, source);
  }
  return result;
}
