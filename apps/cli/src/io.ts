import { randomBytes } from 'node:crypto';
import { createReadStream, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { RecordStore } from '@surae/storage';
import { askSecret } from './ask-secret.ts';
import { openStore } from './open-store.ts';

/** Everything the command does to the outside: the only door to files and the terminal, so that a test can stand in it. */
export interface Io {
  readonly writeOut: (text: string) => void;
  readonly writeError: (text: string) => void;
  /** the bytes of a file, never changed */
  readonly readFile: (path: string) => Promise<Uint8Array>;
  /** the same in order, a piece at a time, for files that need not fit in memory */
  readonly readChunks: (path: string) => AsyncIterable<Uint8Array>;
  readonly writeFile: (path: string, content: string | Uint8Array) => void;
  readonly makeFolder: (path: string) => void;
  readonly exists: (path: string) => boolean;
  /** the day on the calendar of the place: 2026-03-01 */
  readonly today: () => string;
  /** a secret that nobody can guess and nobody has had before */
  readonly drawSecret: () => string;
  /** what somebody types without its being shown; undefined where nobody can type */
  readonly askSecret: (prompt: string) => Promise<string | undefined>;
  /** the store in a folder, to be read; `secret` gives what opens one that is encrypted */
  readonly openStore: (folder: string, secret: () => Promise<string>) => Promise<RecordStore>;
  /** characters in a line of the output */
  readonly width: number;
  /** whether a person watches standard error: progress is shown only then */
  readonly watched: boolean;
  /** whether block and line characters can be drawn */
  readonly drawsBlocks: boolean;
}

function localeDrawsBlocks(environment: NodeJS.ProcessEnv): boolean {
  const locale = environment['LC_ALL'] || environment['LC_CTYPE'] || environment['LANG'] || '';
  return locale === '' || locale === 'C' || locale === 'POSIX' ? false : /utf-?8/i.test(locale);
}

/** The real files and the real terminal. */
export function nodeIo(): Io {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // the reader of the pipe has gone, as with `surae assess ... | head`: nobody is left to tell
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  return {
    writeOut: (text) => void process.stdout.write(text),
    writeError: (text) => void process.stderr.write(text),
    readFile: (path) => readFile(path),
    writeFile: (path, content) => writeFileSync(path, content),
    readChunks: (path) => createReadStream(path, { highWaterMark: 1 << 20 }) as AsyncIterable<Uint8Array>,
    makeFolder: (path) => void mkdirSync(path, { recursive: true }),
    exists: existsSync,
    today: () => {
      const now = new Date();
      const two = (number: number): string => String(number).padStart(2, '0');
      return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
    },
    drawSecret: () => randomBytes(32).toString('hex'),
    askSecret: (prompt) => askSecret(prompt, process.stdin, (text) => void process.stderr.write(text)),
    openStore,
    width: Math.min(Math.max(process.stdout.columns ?? 80, 60), 100),
    watched: process.stderr.isTTY === true && process.stdout.isTTY !== true,
    drawsBlocks: localeDrawsBlocks(process.env) || process.platform === 'darwin',
  };
}
