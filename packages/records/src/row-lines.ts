/** Which line of the file each row of a table came from; kept only where the count is interrupted. */
export class RowLines {
  readonly #rows: number[] = [];
  readonly #lines: number[] = [];
  #expected = -1;

  /** Notes the line of the next row. */
  add(rowIndex: number, line: number): void {
    if (line !== this.#expected) {
      this.#rows.push(rowIndex);
      this.#lines.push(line);
    }
    this.#expected = line + 1;
  }

  /** Line of a row, counted from 1. */
  lineOf(rowIndex: number): number {
    let low = 0;
    let high = this.#rows.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#rows[middle]! <= rowIndex) low = middle;
      else high = middle - 1;
    }
    return this.#lines[low]! + rowIndex - this.#rows[low]!;
  }
}
