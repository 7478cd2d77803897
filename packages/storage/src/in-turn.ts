/** Runs one piece of work after the other, whether or not the caller waits; one that fails does not hold up the next. */
export class InTurn {
  private last: Promise<unknown> = Promise.resolve();

  take<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.last.then(work);
    this.last = turn.catch(() => undefined);
    return turn;
  }
}
