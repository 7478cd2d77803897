/** A value of a table: null was not measured or not told, several words stand in one text parted by semicolons. */
export type StudyCell = number | string | boolean | null;

/** A column as tables that leave tell of it. */
export interface StudyColumn {
  readonly key: string;
  /** UCUM code; '1' for numbers without a dimension and for words */
  readonly unit: string;
  readonly kind: 'number' | 'text' | 'flag' | 'list';
  readonly description: string;
  readonly source: string;
}

/** Rows under columns, in an order that hangs on the data alone. */
export interface StudyTable {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly StudyColumn[];
  readonly rows: readonly (readonly StudyCell[])[];
}

/** A column of words, of a list of words, or of numbers with their unit. */
export function column(
  key: string,
  kind: StudyColumn['kind'],
  description: string,
  { unit = '1', source = 'definition' }: { readonly unit?: string; readonly source?: string } = {},
): StudyColumn {
  return { key, unit, kind, description, source };
}

/** Several words in one cell. */
export function listCell(words: readonly string[]): string | null {
  return words.length === 0 ? null : words.join('; ');
}
