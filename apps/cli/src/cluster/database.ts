import { Pool, type PoolClient, type QueryResultRow } from 'pg';
import { UsageError } from '../usage-error.ts';
import type { DatabaseAddress } from './database-address.ts';

/** Connections of one process: one listens for work, the others ask and write. */
const CONNECTIONS = 4;
/** Until a connection that does not come is given up [ms]. */
const CONNECT_MS = 10_000;
/** Between two attempts to reach a database that is away [ms]. */
const AGAIN_MS = 500;

/** The schema of the queue; its tables are those of the library. */
export const QUEUE_SCHEMA = 'bullmq';

/** Classes of SQLSTATE under which a database is away and comes back: connection exception, operator intervention, out of resources. */
const AWAY_CLASSES = ['08', '57', '53'];
/** What the system says of a machine or a port that does not answer. */
const AWAY_CODES = ['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT', 'ENOENT', 'EHOSTUNREACH', 'ENETUNREACH'];
/** What the driver says without a code. */
const AWAY_WORDS = /connection terminated|timeout exceeded when trying to connect|client has encountered a connection/i;

/** Whether the fault is that the database is away, and not that it refuses what was asked. */
export function isAway(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return AWAY_CODES.includes(code) || AWAY_CLASSES.includes(code.slice(0, 2)) || AWAY_WORDS.test(error.message);
}

/** Why a database cannot be used, in words that hold neither the address nor a password. */
export function faultOf(error: unknown): string {
  if (error instanceof AggregateError && error.errors.length > 0) return faultOf(error.errors[0]);
  if (!(error instanceof Error)) return 'an unknown fault';
  return error.message || ('code' in error ? String(error.code) : error.name);
}

/** How long a database that is away is waited for, and who is told. */
export interface Patience {
  readonly waitMs: number;
  /** is told once when it goes, and once when it is back */
  readonly say: (line: string) => void;
  /** ends the waiting */
  readonly stop?: AbortSignal;
}

/** A PostgreSQL database: questions that may be asked again are asked again while it is away. */
export class Database {
  readonly words: string;
  readonly pool: Pool;
  readonly #patience: Patience;
  #isAway = false;

  constructor({ url, words }: DatabaseAddress, patience: Patience) {
    this.words = words;
    this.#patience = patience;
    const address = new URL(url);
    const options = [address.searchParams.get('options') ?? '', `-c search_path=${QUEUE_SCHEMA}`].join(' ').trim();
    address.searchParams.set('options', options);
    this.pool = new Pool({
      connectionString: address.href,
      max: CONNECTIONS,
      keepAlive: true,
      connectionTimeoutMillis: CONNECT_MS,
      application_name: 'surae',
    });
    // a connection that drops while nobody uses it: the next question finds out
    this.pool.on('error', () => undefined);
    // every queue listens as well
    this.pool.setMaxListeners(0);
  }

  /**
   * Rows of a question that does the same when it is asked twice.
   *
   * @throws {@link UsageError} where the database is away for too long
   */
  async rows<Row extends QueryResultRow>(text: string, values: unknown[] = []): Promise<Row[]> {
    return (await this.steadily(() => this.pool.query<Row>(text, values))).rows;
  }

  /** Several questions of which all hold or none; as a whole they do the same when they are asked twice. */
  async whole<Result>(act: (client: PoolClient) => Promise<Result>): Promise<Result> {
    return this.steadily(async () => {
      const client = await this.pool.connect();
      try {
        await client.query('begin');
        const result = await act(client);
        await client.query('commit');
        client.release();
        return result;
      } catch (error) {
        // the connection goes, and with it what was begun
        client.release(true);
        throw error;
      }
    });
  }

  async close(): Promise<void> {
    await this.pool.end();
  }

  /**
   * Does what does the same when it is done twice, again and again while the database is away.
   *
   * @throws {@link UsageError} where it is away for too long, or refuses
   */
  async steadily<Result>(act: () => Promise<Result>): Promise<Result> {
    const { waitMs, say, stop } = this.#patience;
    const until = performance.now() + waitMs;
    for (;;) {
      try {
        const result = await act();
        if (this.#isAway) say(`The database ${this.words} is back.\n`);
        this.#isAway = false;
        return result;
      } catch (error) {
        if (!isAway(error) || stop?.aborted === true || performance.now() >= until) {
          throw new UsageError(`the database ${this.words} cannot be used: ${faultOf(error)}`);
        }
        if (!this.#isAway) say(`The database ${this.words} is away (${faultOf(error)}): waiting for it.\n`);
        this.#isAway = true;
        await new Promise((done) => void setTimeout(done, AGAIN_MS));
      }
    }
  }
}
