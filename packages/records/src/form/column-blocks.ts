/** Rows of the first block and of the largest ones. */
const FIRST_ROWS = 512;
const MOST_ROWS = 65_536;

/** Columns of numbers that grow row by row without being copied, in blocks that grow with them: half of what is held is filled. */
export class ColumnBlocks {
  readonly #columns: Float64Array[][];
  #block: Float64Array[] = [];
  #room = 0;
  #inBlock = 0;
  #rowCount = 0;

  constructor(columnCount: number) {
    this.#columns = Array.from({ length: columnCount }, () => []);
  }

  get rowCount(): number {
    return this.#rowCount;
  }

  /** Adds one row: a number for each column, NaN where there is none. */
  add(row: Float64Array): void {
    if (this.#inBlock === this.#room) {
      this.#room = Math.min(MOST_ROWS, Math.max(FIRST_ROWS, this.#rowCount));
      this.#block = this.#columns.map((blocks) => {
        const block = new Float64Array(this.#room);
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
    let from = 0;
    for (const block of blocks) {
      whole.set(block.subarray(0, whole.length - from), from);
      from += block.length;
    }
    return whole;
  }
}
