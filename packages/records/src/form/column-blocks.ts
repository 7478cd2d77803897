const BLOCK_ROWS = 65_536;

/** Columns of numbers that grow row by row without being copied: at most one block of each is not filled. */
export class ColumnBlocks {
  readonly #columns: Float64Array[][];
  #block: Float64Array[] = [];
  #inBlock = BLOCK_ROWS;
  #rowCount = 0;

  constructor(columnCount: number) {
    this.#columns = Array.from({ length: columnCount }, () => []);
  }

  get rowCount(): number {
    return this.#rowCount;
  }

  /** Adds one row: a number for each column, NaN where there is none. */
  add(row: Float64Array): void {
    if (this.#inBlock === BLOCK_ROWS) {
      this.#block = this.#columns.map((blocks) => {
        const block = new Float64Array(BLOCK_ROWS);
        blocks.push(block);
        return block;
      });
      this.#inBlock = 0;
    }
    for (let column = 0; column < this.#block.length; column += 1) this.#block[column]![this.#inBlock] = row[column]!;
    this.#inBlock += 1;
    this.#rowCount += 1;
  }

  /** One column at its length; its blocks are let go, so that a second call gives nothing. */
  take(columnIndex: number): Float64Array {
    const whole = new Float64Array(this.#rowCount);
    const blocks = this.#columns[columnIndex]!;
    this.#columns[columnIndex] = [];
    for (const [index, block] of blocks.entries()) {
      const from = index * BLOCK_ROWS;
      whole.set(block.subarray(0, Math.min(BLOCK_ROWS, whole.length - from)), from);
    }
    return whole;
  }
}
