import type { TablesOutput } from './assess-arguments.ts';
import type { Io } from './io.ts';
import { PartFiles } from './part-files.ts';
import { dictionaryRows } from './result-tables.ts';
import type { ResultTable } from './table-shape.ts';
import { csvWriter, parquetWriter, type TableWriter } from './table-writer.ts';
import { type WrittenTables, writtenRows } from './written-rows.ts';

const FORMS = {
  csv: { writer: csvWriter, file: (name: string) => name },
  parquet: { writer: parquetWriter, file: (name: string) => name.replace(/\.csv$/, '.parquet') },
} as const;

interface OpenTable {
  readonly table: ResultTable;
  readonly writer: TableWriter;
  readonly file: string;
}

/** The tables of a run in one form, in one folder. */
class FormFiles {
  readonly #files: PartFiles;
  readonly #tables: readonly OpenTable[];
  readonly #folder: string;
  readonly #form: keyof typeof FORMS;

  constructor(form: keyof typeof FORMS, folder: string, tables: readonly ResultTable[], replace: boolean, io: Io) {
    const { writer, file } = FORMS[form];
    this.#form = form;
    this.#folder = folder;
    // a Parquet file tells of its columns itself
    const kept = tables.filter(({ name }) => form === 'csv' || name !== 'dictionary.csv');
    this.#files = new PartFiles(
      folder,
      kept.map(({ name }) => file(name)),
      replace,
      io,
    );
    this.#tables = kept.map((table) => {
      const own = file(table.name);
      return { table, file: own, writer: writer(table, this.#files.begin(own)) };
    });
  }

  add(rows: WrittenTables): void {
    for (const { table, writer } of this.#tables) {
      const own = rows[table.name];
      if (own !== undefined) writer.add(own);
    }
  }

  place(): string[] {
    for (const { writer } of this.#tables) writer.end();
    const empty = new Set(
      this.#tables.filter(({ writer }) => this.#form === 'parquet' && writer.count === 0).map(({ file }) => file),
    );
    this.#files.place((name) => !empty.has(name));
    return this.#tables.map(({ file, writer }) =>
      empty.has(file) ? `${this.#folder}/${file}: no rows, no file` : `${this.#folder}/${file}: ${writer.count} rows`,
    );
  }

  abandon(): void {
    this.#files.abandon();
  }
}

/** The tables of a run, written while their rows come and put in place whole at the end. */
export class TableFiles {
  readonly #forms: readonly FormFiles[];
  readonly #tables: readonly ResultTable[];

  /** @throws {@link UsageError} when a table is there already, before anything is assessed */
  constructor({ csv, parquet, replace }: TablesOutput, tables: readonly ResultTable[], io: Io) {
    this.#tables = tables;
    this.#forms = [
      ...(csv === undefined ? [] : [new FormFiles('csv', csv, tables, replace, io)]),
      ...(parquet === undefined ? [] : [new FormFiles('parquet', parquet, tables, replace, io)]),
    ];
  }

  add(rows: WrittenTables): void {
    for (const form of this.#forms) form.add(rows);
  }

  /** Puts the tables in place and says what was written. */
  place(): string[] {
    this.add({ 'dictionary.csv': writtenRows(dictionaryRows(this.#tables)) });
    return this.#forms.flatMap((form) => form.place());
  }

  abandon(): void {
    for (const form of this.#forms) form.abandon();
  }
}
