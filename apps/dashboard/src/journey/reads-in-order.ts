/**
 * Reads of one thing that overlap: one that was begun earlier and ends later is dropped, since it saw the thing as it was before.
 * One that fails drops none.
 */
export class ReadsInOrder<Value> {
  private begun = 0;
  private newestEnded = 0;

  /** Reads, and hands on what was read unless a later read has ended before. Throws what the reading throws. */
  async read(read: () => Promise<Value>, take: (value: Value) => void): Promise<void> {
    this.begun += 1;
    const turn = this.begun;
    const value = await read();
    if (turn < this.newestEnded) return;
    this.newestEnded = turn;
    take(value);
  }
}
