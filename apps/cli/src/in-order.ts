/** How many are done at once, and how far ahead of the one that is awaited. */
export interface AtOnce {
  readonly atOnce: number;
  /** no bound where it is left out: what is done then has to be small, or lie elsewhere */
  readonly ahead?: number;
}

/** A promise and what settles it. */
function deferred(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve!: () => void;
  const promise = new Promise<void>((settle) => {
    resolve = settle;
  });
  return { promise, resolve };
}

/**
 * What each item comes to, several at once, in the order of the items whatever the order in which they are done. An item is taken
 * when there is room for it, and what is done is given without waiting for the next item. When `stop` says so no further item is
 * taken; what is done in a row is still given.
 *
 * @param work - must not reject
 */
export async function* inOrder<Item, Done>(
  items: AsyncIterable<Item> | Iterable<Item>,
  work: (item: Item) => Promise<Done>,
  { atOnce, ahead = Infinity }: AtOnce,
  stop?: AbortSignal,
): AsyncGenerator<Done> {
  const source = Symbol.asyncIterator in items ? items[Symbol.asyncIterator]() : items[Symbol.iterator]();
  const done = new Map<number, Done>();
  let [running, started, next] = [0, 0, 0];
  let [isTaking, isEnded] = [false, false];
  let fault: { readonly error: unknown } | undefined;
  let changed = deferred();
  const stopped = (): void => changed.resolve();
  stop?.addEventListener('abort', stopped);

  const begin = (item: Item): void => {
    const at = started;
    started += 1;
    running += 1;
    void work(item).then(
      (result) => {
        done.set(at, result);
        running -= 1;
        changed.resolve();
      },
      (error: unknown) => {
        fault ??= { error };
        changed.resolve();
      },
    );
  };
  const take = (): void => {
    isTaking = true;
    void Promise.resolve(source.next()).then(
      (taken) => {
        isTaking = false;
        if (taken.done === true) isEnded = true;
        else begin(taken.value);
        changed.resolve();
      },
      (error: unknown) => {
        fault ??= { error };
        changed.resolve();
      },
    );
  };

  try {
    for (;;) {
      changed = deferred();
      if (fault !== undefined) throw fault.error;
      if (done.has(next)) {
        const result = done.get(next)!;
        done.delete(next);
        next += 1;
        yield result;
        continue;
      }
      const isStopped = stop?.aborted === true;
      if ((isEnded || isStopped) && running === 0) return;
      if (!isEnded && !isStopped && !isTaking && running < atOnce && started - next < ahead) take();
      await changed.promise;
    }
  } finally {
    stop?.removeEventListener('abort', stopped);
  }
}
