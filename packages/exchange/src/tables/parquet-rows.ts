import { ByteWriter, ParquetWriter, schemaFromColumnData } from 'hyparquet-writer';
import { ExchangeError } from '../errors.ts';
import { PARQUET_TYPES, parquetMetadata } from './parquet.ts';
import type { Cell, TableShape } from './table.ts';

/** Rows in one group: what is held at once of a table that is written while its rows come. */
const ROWS_OF_GROUP = 5_000;

/**
 * A table as Parquet while its rows come: besides the rows of one group nothing of it is held. The bytes do not hang on how many
 * rows are added at a time. Types, nulls and metadata are those of `writeParquet`.
 */
export class ParquetRows {
  readonly #shape: TableShape;
  readonly #take: (piece: Uint8Array) => void;
  readonly #writer = new ByteWriter();
  readonly #parquet: ParquetWriter;
  #rows: (readonly Cell[])[] = [];
  #count = 0;

  /** @param take - is given the bytes in order, a piece at a time; a piece is good until the call returns */
  constructor(shape: TableShape, take: (piece: Uint8Array) => void) {
    this.#shape = shape;
    this.#take = take;
    this.#parquet = new ParquetWriter({
      writer: this.#writer,
      schema: schemaFromColumnData({ columnData: this.#columns([]) }),
      kvMetadata: parquetMetadata(shape),
      createdBy: 'surae',
    });
  }

  /** Rows so far. */
  get count(): number {
    return this.#count;
  }

  add(rows: readonly (readonly Cell[])[]): void {
    for (const row of rows) {
      this.#rows.push(row);
      this.#count += 1;
      if (this.#rows.length === ROWS_OF_GROUP) this.#writeGroup();
    }
  }

  /**
   * Writes what is left and the foot of the file.
   *
   * @throws {@link ExchangeError} `bad-table` without a row: what the writer makes of none, other readers refuse
   */
  end(): void {
    if (this.#count === 0) {
      throw new ExchangeError('bad-table', { file: this.#shape.name, expected: 'a row', actual: 'none' });
    }
    if (this.#rows.length > 0) this.#writeGroup();
    void this.#parquet.finish();
    this.#handOver();
  }

  #columns(rows: readonly (readonly Cell[])[]) {
    return this.#shape.columns.map(({ key, kind }, at) => ({
      name: key,
      data: rows.map((row): Cell => row[at]!),
      type: PARQUET_TYPES[kind],
      nullable: true,
    }));
  }

  #writeGroup(): void {
    const columnData = this.#columns(this.#rows).map(({ name, data }) => ({ name, data }));
    this.#rows = [];
    void this.#parquet.write({ columnData, rowGroupSize: ROWS_OF_GROUP });
    this.#handOver();
  }

  #handOver(): void {
    this.#take(this.#writer.getBytes());
    this.#writer.index = 0;
  }
}
