import type { Column } from './column.ts';

/** The makers of the columns of one table. */
export interface ColumnMakers {
  /** a number with its unit; the factor turns the unit of the field into that of the column */
  readonly figure: (key: string, field: string, unit: string, factor: number, description: string) => Column;
  readonly word: (key: string, field: string, description: string) => Column;
  readonly flag: (key: string, field: string, description: string) => Column;
  /** several words */
  readonly list: (key: string, field: string, description: string) => Column;
}

/** Makers of columns whose ids begin with the name of the table. */
export function columnsOf(table: string): ColumnMakers {
  const column = (
    kind: Column['kind'],
    {
      key,
      field,
      unit = '1',
      factor = 1,
      description,
    }: Pick<Column, 'key' | 'field' | 'description'> & Partial<Column>,
  ): Column => ({
    version: '1',
    source: 'definition',
    mark: 'computed',
    id: `${table}.${key}`,
    key,
    field,
    unit,
    factor,
    kind,
    description,
  });
  return {
    figure: (key, field, unit, factor, description) => column('number', { key, field, unit, factor, description }),
    word: (key, field, description) => column('text', { key, field, description }),
    flag: (key, field, description) => column('flag', { key, field, description }),
    list: (key, field, description) => column('list', { key, field, description }),
  };
}
