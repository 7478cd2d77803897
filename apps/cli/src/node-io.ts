import { randomBytes } from 'node:crypto';
import {
  closeSync,
  type Dirent,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { constants } from 'node:os';
import { join, resolve } from 'node:path';
import { askSecret } from './ask-secret.ts';
import type { FileOut, Io, Listed } from './io.ts';
import { fileLog } from './log.ts';
import { nodeFiles } from './node-files.ts';
import { openStore } from './open-store.ts';

function localeDrawsBlocks(environment: NodeJS.ProcessEnv): boolean {
  const locale = environment['LC_ALL'] || environment['LC_CTYPE'] || environment['LANG'] || '';
  return locale === '' || locale === 'C' || locale === 'POSIX' ? false : /utf-?8/i.test(locale);
}

function kindOf(path: string): 'file' | 'folder' | undefined {
  const found = statSync(path, { throwIfNoEntry: false });
  return found === undefined ? undefined : found.isDirectory() ? 'folder' : 'file';
}

function listed(folder: string, entry: Dirent): Listed {
  const { name } = entry;
  if (!entry.isSymbolicLink())
    return { name, kind: entry.isDirectory() ? 'folder' : entry.isFile() ? 'file' : 'other' };
  return { name, kind: kindOf(join(folder, name)) === 'file' ? 'file' : 'other' };
}

function openFile(path: string): FileOut {
  const file = openSync(path, 'w');
  return {
    write: (content) => {
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    },
    close: () => closeSync(file),
  };
}

const STOPS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** The first signal asks the run to stop; the second ends it at once, as a signal does. */
function onStop(handler: (signal: number) => void): () => void {
  const handlers = STOPS.map((name) => {
    const heard = (): void => {
      off();
      handler(constants.signals[name]);
    };
    process.once(name, heard);
    return () => process.off(name, heard);
  });
  const off = (): void => handlers.forEach((one) => one());
  return off;
}

/** The real files and the real terminal. */
export function nodeIo(): Io {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // the reader of the pipe has gone, as with `surae assess ... | head`: nobody is left to tell
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  const files = nodeFiles();
  return {
    ...files,
    writeOut: (text) => void process.stdout.write(text),
    writeError: (text) => void process.stderr.write(text),
    input: () => process.stdin as AsyncIterable<Uint8Array>,
    writeFile: (path, content) => writeFileSync(path, content),
    openFile,
    rename: renameSync,
    remove: (path) => rmSync(path, { force: true }),
    openLog: fileLog,
    makeFolder: (path) => void mkdirSync(path, { recursive: true }),
    exists: existsSync,
    kindOf,
    list: (folder) => readdirSync(folder, { withFileTypes: true }).map((entry) => listed(folder, entry)),
    startPool: async (plan, size) => (await import('./thread-pool.ts')).startPool(plan, size, files),
    onStop,
    nowMs: () => performance.now(),
    today: () => {
      const now = new Date();
      const two = (number: number): string => String(number).padStart(2, '0');
      return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
    },
    drawSecret: () => randomBytes(32).toString('hex'),
    askSecret: (prompt) => askSecret(prompt, process.stdin, (text) => void process.stderr.write(text)),
    openStore,
    openCluster: async (...where) => (await import('./cluster/cluster.ts')).openCluster(...where),
    variable: (name) => process.env[name],
    fullPath: (path) => resolve(path),
    width: Math.min(Math.max(process.stdout.columns ?? 80, 60), 100),
    watched: process.stderr.isTTY === true,
    shared: process.stdout.isTTY === true,
    drawsBlocks: localeDrawsBlocks(process.env) || process.platform === 'darwin',
  };
}
