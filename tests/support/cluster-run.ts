import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { simulateSet } from '@surae/simulation';
import { Client, type QueryResultRow } from 'pg';
import { assessor } from '../../apps/cli/src/assessor.ts';
import type { Io } from '../../apps/cli/src/io.ts';
import { main } from '../../apps/cli/src/main.ts';
import { nodeIo } from '../../apps/cli/src/node-io.ts';
import { traceCsv } from '../../apps/cli/src/trace-csv.ts';
import type { PostgresServer } from './postgres-server.ts';

/** Recordings that are made anew; the others hold the same samples under another remark, which makes other bytes. */
const DIFFERENT = 5;

/** A command that runs, and what it says. */
export interface Running {
  readonly child: ChildProcess;
  readonly said: { out: string; error: string };
  readonly ended: Promise<number | null>;
}

/** The commands with a database in their environment, and every word that they ever said. */
export class ClusterCommands {
  readonly #url: string;
  readonly #io = nodeIo();
  /** everything that was said so far */
  words = '';

  constructor(url: string) {
    this.#url = url;
  }

  /** Runs a command in this process: real files, the real database, one recording after the other. */
  async run(...args: string[]): Promise<{ status: number; stdout: string; stderr: string }> {
    let [stdout, stderr] = ['', ''];
    const io: Io = {
      ...this.#io,
      writeOut: (text) => {
        stdout += text;
      },
      writeError: (text) => {
        stderr += text;
      },
      startPool: (plan) =>
        Promise.resolve({ workers: 1, run: assessor(plan, this.#io), close: () => Promise.resolve() }),
      onStop: () => () => undefined,
      variable: (name) => (name === 'SURAE_DATABASE' ? this.#url : undefined),
      width: 80,
      watched: false,
      shared: false,
    };
    const status = await main(args, io);
    this.words += stdout + stderr;
    return { status, stdout, stderr };
  }

  /** Begins the built command as a process of its own. */
  begin(...args: string[]): Running {
    if (!existsSync('apps/cli/dist/main.js')) throw new Error('the command is not built: npm run build');
    const child = spawn(process.execPath, ['apps/cli/bin/surae.js', ...args], {
      env: { ...process.env, LANG: 'C.UTF-8', SURAE_DATABASE: this.#url },
    });
    const said = { out: '', error: '' };
    child.stdout.on('data', (chunk: Buffer) => {
      said.out += chunk.toString();
      this.words += chunk.toString();
    });
    child.stderr.on('data', (chunk: Buffer) => {
      said.error += chunk.toString();
      this.words += chunk.toString();
    });
    return { child, said, ended: new Promise((done) => void child.once('close', (code) => done(code))) };
  }
}

/** The files of a folder with their bytes. */
export function tablesIn(folder: string): Record<string, string> {
  const names = readdirSync(folder).sort();
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'latin1')]));
}

/** Rows of the database, asked anew each time so that a server that was away is no matter. */
export async function rowsOf<Row extends QueryResultRow>(
  { url }: PostgresServer,
  text: string,
  values: unknown[] = [],
): Promise<Row[]> {
  const client = new Client({ connectionString: url });
  client.on('error', () => undefined);
  await client.connect();
  try {
    return (await client.query<Row>(text, values)).rows;
  } finally {
    await client.end();
  }
}

/** How many rows there are. */
export async function countOf(server: PostgresServer, from: string): Promise<number> {
  const [{ count }] = await rowsOf<{ count: number }>(server, `select count(*)::int as count from ${from}`);
  return count;
}

/** Every row of every table of runs and of the queue, as text. */
export async function everyRow(server: PostgresServer): Promise<string> {
  const tables = await rowsOf<{ name: string }>(
    server,
    "select format('%I.%I', schemaname, tablename) as name from pg_tables where schemaname in ('surae', 'bullmq')",
  );
  const rows: string[] = [];
  for (const { name } of tables)
    for (const { row } of await rowsOf<{ row: string }>(server, `select one::text as row from ${name} as one`))
      rows.push(`${name} ${row}`);
  return rows.join('\n');
}

/** Writes so many short recordings of the heel and a manifest with persons, visits and sides. No two hold the same bytes. */
export function writeRecordings(folder: string, count: number): void {
  mkdirSync(folder, { recursive: true });
  const made = Array.from({ length: Math.min(DIFFERENT, count) }, (_, at) =>
    traceCsv(simulateSet({ placement: 'heel', level: 'clean', seed: 1 + at, count: 3 }).trace, []),
  );
  const rows = ['file,person,visit,side,placement'];
  for (let at = 0; at < count; at += 1) {
    writeFileSync(join(folder, `${at}.csv`), `# recording ${at} of ${basename(folder)}\n${made[at % DIFFERENT]}`);
    rows.push(`${at}.csv,P${at >> 2},${(at >> 1) & 1},${at % 2 === 0 ? 'left' : 'right'},heel`);
  }
  writeFileSync(join(folder, 'm.csv'), `${rows.join('\n')}\n`);
}
