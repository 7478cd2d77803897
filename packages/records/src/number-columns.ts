/** Columns of numbers that grow as rows arrive. */
export class NumberColumns {
  readonly columns: Float64Array[];
  capacity: number;

  constructor(columnCount: number, capacity: number) {
    this.capacity = Math.max(16, capacity);
    this.columns = Array.from({ length: columnCount }, () => new Float64Array(this.capacity));
  }

  /** Makes room for at least one more row than there is now. */
  grow(): void {
    this.capacity = Math.ceil(this.capacity * 1.5) + 16;
    for (let index = 0; index < this.columns.length; index += 1) {
      const larger = new Float64Array(this.capacity);
      larger.set(this.columns[index]!);
      this.columns[index] = larger;
    }
  }

  /** The columns at their final length; room that was never written to takes no memory, and a copy would. */
  take(rowCount: number): Float64Array[] {
    return this.columns.map((column) => column.subarray(0, rowCount));
  }
}
