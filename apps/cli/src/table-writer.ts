import { cellsOfLines, csvLines, ParquetRows } from '@surae/exchange';
import type { FileOut } from './io.ts';
import type { ResultTable } from './table-shape.ts';
import type { WrittenRows } from './written-rows.ts';

/** A table that is written while its rows come. */
export interface TableWriter {
  readonly count: number;
  add(rows: WrittenRows): void;
  /** writes what is left */
  end(): void;
}

/** Characters that are held before they are written. */
const HELD = 1 << 16;

export function csvWriter({ columns }: ResultTable, file: FileOut): TableWriter {
  let text = csvLines([columns.map(({ key }) => key)]);
  let count = 0;
  const flush = (): void => {
    file.write(text);
    text = '';
  };
  return {
    get count() {
      return count;
    },
    add: (rows) => {
      count += rows.count;
      text += rows.text;
      if (text.length > HELD) flush();
    },
    end: flush,
  };
}

/** As Parquet, units and descriptions in the metadata; a table without rows has no file. */
export function parquetWriter(table: ResultTable, file: FileOut): TableWriter {
  const name = table.name.replace(/\.csv$/, '');
  const rows = new ParquetRows({ ...table, name }, (piece) => file.write(piece));
  return {
    get count() {
      return rows.count;
    },
    add: ({ text }) => rows.add(cellsOfLines(text, table, table.name)),
    end: () => {
      if (rows.count > 0) rows.end();
    },
  };
}
