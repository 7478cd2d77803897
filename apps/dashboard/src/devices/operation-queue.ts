/** Does one operation after the other: a Bluetooth device refuses a second one while the first runs. */
export class OperationQueue {
  private last: Promise<unknown> = Promise.resolve();

  /** What the operation gives, once all that were asked for before are over, however they ended. */
  run<T>(operation: () => Promise<T>): Promise<T> {
    const result = this.last.then(operation, operation);
    this.last = result.catch(() => {});
    return result;
  }
}
