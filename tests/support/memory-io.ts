import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { assessor } from '../../apps/cli/src/assessor.ts';
import type { Io, Listed } from '../../apps/cli/src/io.ts';
import type { Log } from '../../apps/cli/src/log.ts';
import { openStore } from '../../apps/cli/src/open-store.ts';

/** A log in memory. */
export class MemoryLog implements Log {
  bytes: Buffer;
  isClosed = false;

  constructor(bytes: Uint8Array = new Uint8Array(0)) {
    this.bytes = Buffer.from(bytes);
  }

  get length(): number {
    return this.bytes.length;
  }

  add(bytes: Uint8Array): void {
    this.bytes = Buffer.concat([this.bytes, bytes]);
  }

  read(from: number, length: number): Buffer {
    return this.bytes.subarray(from, from + length);
  }

  close(): void {
    this.isClosed = true;
  }
}

/** Files and terminal of the command line, in memory; real fixture files may be read, nothing is written to disk. */
export class MemoryIo {
  out = '';
  error = '';
  readonly files = new Map<string, string | Uint8Array>();
  readonly folders = new Set<string>();
  width = 80;
  drawn = 0;
  /** what somebody types when a secret is asked; undefined where nobody can */
  typed: string | undefined;
  readonly asked: string[] = [];
  readonly logs = new Map<string, MemoryLog>();
  readonly variables = new Map<string, string>();
  /** what comes on standard input */
  typedIn = '';
  nowMs = 0;
  /** the handlers that wait for a signal */
  readonly stops = new Set<(signal: number) => void>();
  /** how many recordings were assessed, and not taken from a journal */
  assessed = 0;

  get io(): Io {
    const { files, typedIn } = this;
    return {
      writeOut: (text) => {
        this.out += text;
      },
      writeError: (text) => {
        this.error += text;
      },
      readFile: (path) => {
        const content = this.files.get(path) ?? this.logs.get(path)?.bytes;
        if (content === undefined) return readFile(path);
        return Promise.resolve(typeof content === 'string' ? new TextEncoder().encode(content) : content);
      },
      writeFile: (path, content) => void this.files.set(path, content),
      readChunks: async function* (this: Io, path: string) {
        const bytes = await this.readFile(path);
        for (let at = 0; at < bytes.length; at += 1000) yield bytes.subarray(at, at + 1000);
      },
      input: () => Readable.from([new TextEncoder().encode(typedIn)]),
      openFile: (path) => {
        const pieces: Uint8Array[] = [];
        files.set(path, '');
        return {
          write: (content) =>
            void pieces.push(typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content)),
          close: () => {
            const bytes = Buffer.concat(pieces);
            files.set(path, path.includes('.parquet') ? new Uint8Array(bytes) : bytes.toString('utf8'));
          },
        };
      },
      rename: (from, to) => {
        files.set(to, files.get(from)!);
        files.delete(from);
      },
      remove: (path) => void files.delete(path),
      openLog: (path) => {
        const log = new MemoryLog(path === undefined ? undefined : this.logs.get(path)?.bytes);
        if (path !== undefined) this.logs.set(path, log);
        return log;
      },
      kindOf: (path) => {
        if (files.has(path)) return 'file';
        return [...files.keys()].some((name) => name.startsWith(`${path.replace(/\/$/, '')}/`)) ? 'folder' : undefined;
      },
      list: (folder) => {
        const inside = [...files.keys()].filter((name) => name.startsWith(`${folder}/`));
        const rests = inside.map((name) => name.slice(folder.length + 1));
        const listed = rests.map(
          (rest): Listed => ({ name: rest.split('/')[0], kind: rest.includes('/') ? 'folder' : 'file' }),
        );
        return [...new Map(listed.map((one) => [one.name, one])).values()];
      },
      zipNames: () => Promise.reject(new Error('no zip lies in memory')),
      startPool: (plan) => {
        const assess = assessor(plan, this.io);
        return Promise.resolve({
          workers: 1,
          run: async (job) => {
            const answer = await assess(job);
            if (answer.kind === 'new') this.assessed += 1;
            return answer;
          },
          close: () => Promise.resolve(),
        });
      },
      onStop: (handler) => {
        this.stops.add(handler);
        return () => this.stops.delete(handler);
      },
      nowMs: () => this.nowMs,
      makeFolder: (path) => void this.folders.add(path),
      today: () => '2026-11-29',
      drawSecret: () => `drawn-${(this.drawn += 1)}`,
      askSecret: (prompt) => {
        this.asked.push(prompt);
        return Promise.resolve(this.typed);
      },
      openStore,
      openCluster: async (...where) => (await import('../../apps/cli/src/cluster/cluster.ts')).openCluster(...where),
      variable: (name) => this.variables.get(name),
      fullPath: (path) => `/in-memory/${path}`,
      exists: (path) => this.files.has(path) || this.logs.has(path),
      width: this.width,
      watched: false,
      shared: false,
      drawsBlocks: true,
    };
  }

  text(path: string): string {
    const content = this.files.get(path);
    if (typeof content !== 'string')
      throw new Error(`${path} was not written; there are ${[...this.files.keys()].join(', ')}`);
    return content;
  }

  /** what was added to a log so far */
  logText(path: string): string {
    const log = this.logs.get(path);
    if (log === undefined) throw new Error(`${path} was not begun; there are ${[...this.logs.keys()].join(', ')}`);
    return log.bytes.toString('utf8');
  }
}
