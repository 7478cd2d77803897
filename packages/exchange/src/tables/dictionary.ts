import { type Table, type TableColumn, tableOf } from './table.ts';

const word = (key: string, description: string): TableColumn => ({
  key,
  unit: '1',
  kind: 'text',
  description,
  source: 'definition',
});

/** One row for every column of every table: what it is, in which unit, and who says so. */
export function dictionaryTable(shapes: readonly Omit<Table, 'rows'>[]): Table {
  return tableOf({
    name: 'dictionary',
    title: 'Columns of all tables',
    columns: [
      word('table', 'name of the table'),
      word('column', 'key of the column'),
      word('unit', 'UCUM code of its unit; empty for words'),
      word('kind', 'number, text, flag or list (words parted by semicolons)'),
      word('description', 'what it is'),
      word('source', 'who says what it is'),
    ],
    rows: shapes.flatMap(({ name, columns }) =>
      columns.map(({ key, unit, kind, description, source }) => [
        name,
        key,
        kind === 'number' ? unit : null,
        kind,
        description,
        source,
      ]),
    ),
  });
}
