import { UsageError } from '../usage-error.ts';
import { Database, faultOf, type Patience } from './database.ts';
import type { DatabaseAddress } from './database-address.ts';
import { RunQueue } from './run-queue.ts';
import { RunStore } from './run-store.ts';

/** Runs in a database, and the queue of each. */
export interface Cluster {
  /** where it is, without a password */
  readonly words: string;
  readonly store: RunStore;
  readonly queue: (run: string) => RunQueue;
  /** makes the tables where they are not */
  readonly prepare: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * The runs in a database.
 *
 * @throws {@link UsageError} when it cannot be reached now: an address that is wrong is not waited for
 */
export async function openCluster(address: DatabaseAddress, patience: Patience): Promise<Cluster> {
  const database = new Database(address, patience);
  const queues: RunQueue[] = [];
  const close = async (): Promise<void> => {
    await Promise.all(queues.map((queue) => queue.close()));
    await database.close();
  };
  try {
    await database.pool.query('select 1');
  } catch (error) {
    await database.close();
    throw new UsageError(`the database ${address.words} cannot be reached: ${faultOf(error)}`);
  }
  const store = new RunStore(database);
  return {
    words: address.words,
    store,
    queue: (run) => {
      const queue = new RunQueue(run, database);
      queues.push(queue);
      return queue;
    },
    prepare: async () => {
      await RunQueue.prepare(database);
      await store.prepare();
    },
    close,
  };
}
