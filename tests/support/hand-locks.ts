/** Locks as a browser has them, for windows that are all in one program: one holder of a name, the others wait in order. */
export class HandLocks {
  private readonly held = new Map<string, Promise<unknown>>();

  readonly request = (async (
    name: string,
    options: LockOptions,
    callback: (lock: Lock | null) => unknown,
  ): Promise<unknown> => {
    if (options.ifAvailable === true && this.held.has(name)) return callback(null);
    while (this.held.has(name)) {
      const aborted = new Promise((_resolve, reject) => {
        options.signal?.addEventListener('abort', () => reject(new DOMException('aborted', 'AbortError')));
      });
      await Promise.race([this.held.get(name), aborted]);
    }
    const work = Promise.resolve(callback({ name, mode: 'exclusive' }));
    this.held.set(name, work);
    try {
      return await work;
    } finally {
      this.held.delete(name);
    }
  }) as LockManager['request'];
}
