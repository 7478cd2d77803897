import {
  createPostgresBackend,
  type PostgresConnectionOptions,
  type PostgresQueueBackend,
  Queue,
  runMigrations,
  Worker,
} from 'bullmq';
import { type Database, isAway, QUEUE_SCHEMA } from './database.ts';

/** Jobs that go to the queue at once. */
const AT_ONCE = 500;
/** How often a recording is tried that another machine may be able to read. */
const ATTEMPTS = 3;
/** Workers that may be lost with a recording in hand before it is left alone. */
const LOST = 2;
/** What the library says of a job whose workers were lost. */
const STALLED = 'job stalled more than allowable limit';

/** How far a queue is. */
export interface QueueCounts {
  readonly waiting: number;
  readonly inHand: number;
}

/** What takes jobs from a queue until it is closed; closing waits for those in hand. */
export interface QueueWorker {
  close(): Promise<void>;
}

type RunJobs = Queue<unknown, void, string, unknown, void, string, PostgresQueueBackend, PostgresConnectionOptions>;

/** The pool of a database, which the library knows under a type of its own. */
function connectionOf({ pool }: Database): PostgresConnectionOptions {
  return pool as unknown as PostgresConnectionOptions;
}

/** The jobs of a run, each named by the result that it is to make: the same job is in the queue once. */
export class RunQueue {
  readonly #database: Database;
  readonly #name: string;
  readonly #queue: RunJobs;

  constructor(run: string, database: Database) {
    this.#database = database;
    // a colon has a meaning in the library
    this.#name = `surae ${run}`;
    this.#queue = new Queue(this.#name, { connection: connectionOf(database) }, createPostgresBackend);
    // what does not come to be is thrown where it was asked for
    this.#queue.on('error', () => undefined);
  }

  /** Makes the tables of the queue where they are not. */
  static async prepare(database: Database): Promise<void> {
    const client = await database.pool.connect();
    try {
      await runMigrations(client, QUEUE_SCHEMA);
    } finally {
      client.release();
    }
  }

  /** Adds jobs that are not there. */
  async add(ids: readonly string[]): Promise<void> {
    for (let at = 0; at < ids.length; at += AT_ONCE) {
      const jobs = ids.slice(at, at + AT_ONCE).map((jobId) => ({
        name: 'assess',
        data: {},
        opts: { jobId, attempts: ATTEMPTS, removeOnComplete: true, stackTraceLimit: 0 },
      }));
      await this.#database.steadily(() => this.#queue.addBulk(jobs));
    }
  }

  async counts(): Promise<QueueCounts> {
    const counts = await this.#database.steadily(() => this.#queue.getJobCounts('active', 'waiting', 'delayed'));
    const { active = 0, waiting = 0, delayed = 0 } = counts;
    return { waiting: waiting + delayed, inHand: active };
  }

  /** Workers that are connected. */
  async workers(): Promise<number> {
    return this.#database.steadily(() => this.#queue.getWorkersCount());
  }

  /** Why a recording was given up, by the name of its result. */
  async givenUp(): Promise<ReadonlyMap<string, string>> {
    const reasons = new Map<string, string>();
    for (let from = 0; ; from += AT_ONCE) {
      const failed = await this.#database.steadily(() => this.#queue.getFailed(from, from + AT_ONCE - 1));
      for (const { id, failedReason } of failed) reasons.set(id!, reasonOf(failedReason));
      if (failed.length < AT_ONCE) return reasons;
    }
  }

  /** Forgets that jobs were given up, so that they can be added again. */
  async forgetGivenUp(): Promise<void> {
    while ((await this.#database.steadily(() => this.#queue.clean(0, AT_ONCE, 'failed'))).length > 0);
  }

  /**
   * Takes jobs, several at once. One whose work throws is tried again, and given up in the end; one whose worker was not heard of
   * for so long goes to another.
   */
  work(make: (id: string) => Promise<void>, atOnce: number, patienceMs: number): QueueWorker {
    const suspects = new Set<string>();
    const worker = new Worker(
      this.#name,
      async ({ id }) => {
        try {
          await make(id!);
        } finally {
          suspects.delete(id!);
          if (suspects.size === 0) worker.concurrency = atOnce;
        }
      },
      {
        connection: connectionOf(this.#database),
        concurrency: atOnce,
        lockDuration: patienceMs,
        stalledInterval: patienceMs / 3,
        maxStalledCount: LOST,
        drainDelay: 1,
        runRetryDelay: 500,
      },
      createPostgresBackend,
    );
    worker.on('error', () => undefined);
    // what a worker was lost with once is taken alone, so that no other recording is lost with it again
    worker.on('active', ({ id, stalledCounter }) => {
      if (stalledCounter === 0) return;
      suspects.add(id!);
      worker.concurrency = 1;
    });
    return { close: () => worker.close() };
  }

  /** Takes the queue away with all its jobs. */
  async remove(): Promise<void> {
    await this.#queue.pause();
    await this.#queue.obliterate({ force: true });
  }

  async close(): Promise<void> {
    await this.#queue.close().catch((error: unknown) => {
      if (!isAway(error)) throw error;
    });
  }
}

function reasonOf(failedReason: string | undefined): string {
  if (failedReason === STALLED) return `${LOST + 1} workers were lost while they had it in hand`;
  return failedReason || 'it could not be assessed, and nothing is known of the reason';
}
