import type { WorkItem } from '@surae/study';
import type { PackedEntry } from '../pool.ts';
import { UsageError } from '../usage-error.ts';
import type { Database } from './database.ts';
import { CREATE_LAYOUT, LAYOUT } from './layout.ts';
import { packedItem, packedPlan, type RunRecord, unpackedItem, unpackedPlan } from './run-record.ts';

/** A recording of a run, and under which name its result lies. */
export interface RunItem {
  readonly item: WorkItem;
  /** hash of all that the result hangs on */
  readonly id: string;
  /** of the bytes; null where they could not be read */
  readonly sha256: string | null;
}

/** A recording in its place, with its result as far as there is one. */
export interface PlacedItem extends RunItem {
  readonly place: number;
  readonly entry: PackedEntry | undefined;
}

/** Rows that go to the database at once. */
const ROWS = 500;

interface RunRow {
  readonly name: string;
  readonly software: string;
  readonly rules: string;
  readonly list: string;
  readonly plan: string;
  readonly tests: string;
  readonly compares: boolean;
  readonly holds_bytes: boolean;
  readonly recordings: number;
}

function recordOf({ plan, tests, holds_bytes: holdsBytes, ...row }: RunRow): RunRecord {
  return { ...row, holdsBytes, plan: unpackedPlan(plan), tests: JSON.parse(tests) as RunRecord['tests'] };
}

/** Runs with their recordings and results in a database. A result is written once, and what is written is never changed. */
export class RunStore {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  /** Makes the tables where they are not. */
  async prepare(): Promise<void> {
    await this.#database.whole(async (client) => {
      // two that begin at once would both find nothing
      await client.query("select pg_advisory_xact_lock(hashtext('surae.layout'))");
      await client.query(CREATE_LAYOUT);
    });
    await this.check();
  }

  /** @throws {@link UsageError} where there are no tables, or those of another version of this software */
  async check(): Promise<void> {
    const [found] = await this.#database.rows<{ there: boolean }>(
      "select to_regclass('surae.layout') is not null as there",
    );
    const { words } = this.#database;
    if (found?.there !== true)
      throw new UsageError(`the database ${words} holds no run: surae scatter puts one into it`);
    const [row] = await this.#database.rows<{ version: number }>('select max(version) as version from surae.layout');
    if (row?.version !== LAYOUT) {
      throw new UsageError(
        `the database ${words} holds runs in the layout ${row?.version}, and this software knows the layout ${LAYOUT}: use another database`,
      );
    }
  }

  async run(name: string): Promise<RunRecord | undefined> {
    const [row] = await this.#database.rows<RunRow>('select * from surae.run where name = $1', [name]);
    return row === undefined ? undefined : recordOf(row);
  }

  /** All runs, those that were scattered first before the others. */
  async runs(): Promise<RunRecord[]> {
    return (await this.#database.rows<RunRow>('select * from surae.run order by made_at, name')).map(recordOf);
  }

  /** Adds a run with its recordings, whole or not at all. */
  async add(run: RunRecord, items: readonly RunItem[]): Promise<void> {
    await this.#database.whole(async (client) => {
      await client.query(
        `insert into surae.run (name, software, rules, list, plan, tests, compares, holds_bytes, recordings)
         values ($1, $2, $3, $4, $5, $6, $7, $8, $9) on conflict do nothing`,
        [
          run.name,
          run.software,
          run.rules,
          run.list,
          packedPlan(run.plan),
          JSON.stringify(run.tests),
          run.compares,
          run.holdsBytes,
          run.recordings,
        ],
      );
      for (let at = 0; at < items.length; at += ROWS) {
        const rows = items.slice(at, at + ROWS);
        await client.query(
          `insert into surae.recording (run, place, id, sha256, item)
           select $1, * from unnest($2::int[], $3::text[], $4::text[], $5::text[]) on conflict do nothing`,
          [
            run.name,
            rows.map((_, place) => at + place),
            rows.map(({ id }) => id),
            rows.map(({ sha256 }) => sha256),
            rows.map(({ item }) => packedItem(item)),
          ],
        );
      }
    });
  }

  /** The recording whose result has this name; undefined where the run holds none. */
  async item(run: string, id: string): Promise<(RunItem & { readonly isDone: boolean }) | undefined> {
    const [row] = await this.#database.rows<{ item: string; sha256: string | null; done: boolean }>(
      `select item, sha256, exists (select from surae.result where result.id = recording.id) as done
       from surae.recording where id = $2 and run = $1 order by place limit 1`,
      [run, id],
    );
    if (row === undefined) return undefined;
    return { id, item: unpackedItem(row.item), sha256: row.sha256, isDone: row.done };
  }

  /** Adds a result; one that is there already stays. @returns whether it was new */
  async addResult(id: string, { sha256, body }: PackedEntry): Promise<boolean> {
    const rows = await this.#database.rows<{ id: string }>(
      'insert into surae.result (id, sha256, body) values ($1, $2, $3) on conflict do nothing returning id',
      [id, sha256, Buffer.from(body)],
    );
    return rows.length > 0;
  }

  /** Recordings of a run from a place on, in their order, each with its result as far as there is one. */
  async page(run: string, from: number): Promise<PlacedItem[]> {
    const rows = await this.#database.rows<{
      place: number;
      id: string;
      sha256: string | null;
      item: string;
      found: string | null;
      body: Buffer | null;
    }>(
      `select place, id, recording.sha256, item, result.sha256 as found, body
       from surae.recording left join surae.result using (id)
       where run = $1 and place >= $2 order by place limit ${ROWS}`,
      [run, from],
    );
    return rows.map(({ place, id, sha256, item, found, body }) => ({
      place,
      id,
      sha256,
      item: unpackedItem(item),
      entry: body === null ? undefined : { sha256: found, body },
    }));
  }

  /** Names of the results that a run waits for. */
  async missing(run: string): Promise<string[]> {
    const rows = await this.#database.rows<{ id: string }>(
      `select id from surae.recording where run = $1 and not exists
         (select from surae.result where result.id = recording.id)
       group by id order by min(place)`,
      [run],
    );
    return rows.map(({ id }) => id);
  }

  /** How many different results a run comes to. */
  async results(run: string): Promise<number> {
    const [row] = await this.#database.rows<{ count: number }>(
      'select count(distinct id)::int as count from surae.recording where run = $1',
      [run],
    );
    return row?.count ?? 0;
  }

  /** The names of the files whose results have these names. */
  async files(run: string, ids: readonly string[]): Promise<Map<string, string>> {
    const rows = await this.#database.rows<{ id: string; item: string }>(
      'select id, item from surae.recording where run = $1 and id = any($2) order by place desc',
      [run, ids],
    );
    return new Map(rows.map(({ id, item }) => [id, unpackedItem(item).file]));
  }

  async addBytes(sha256: string, bytes: Uint8Array): Promise<void> {
    await this.#database.rows('insert into surae.bytes values ($1, $2) on conflict do nothing', [
      sha256,
      Buffer.from(bytes),
    ]);
  }

  async bytes(sha256: string): Promise<Uint8Array | undefined> {
    const [row] = await this.#database.rows<{ bytes: Buffer }>('select bytes from surae.bytes where sha256 = $1', [
      sha256,
    ]);
    return row?.bytes;
  }

  /** Takes a run away, and the results and bytes that no other run has. */
  async remove(run: string): Promise<void> {
    await this.#database.whole(async (client) => {
      await client.query('delete from surae.run where name = $1', [run]);
      await client.query(
        'delete from surae.result where not exists (select from surae.recording where recording.id = result.id)',
      );
      await client.query(
        'delete from surae.bytes where not exists (select from surae.recording where recording.sha256 = bytes.sha256)',
      );
    });
  }
}
