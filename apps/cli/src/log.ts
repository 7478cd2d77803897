import { closeSync, fstatSync, fsyncSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Bytes that are only added to, and can be read again. */
export interface Log {
  /** bytes in it so far */
  readonly length: number;
  /** adds at the end */
  add(bytes: Uint8Array): void;
  read(from: number, length: number): Buffer;
  /** everything is on the disk when it returns */
  close(): void;
}

/** A log in a file, or without a name in one of its own that goes when the run ends, however it ends. */
export function fileLog(path: string | undefined): Log {
  const folder = path === undefined ? mkdtempSync(join(tmpdir(), 'surae-')) : undefined;
  const place = path ?? join(folder!, 'results');
  const file = openSync(place, 'a+');
  // an open file without a name goes with the process; where the system does not allow that, it goes at the end
  const clear = (): void => {
    if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
  };
  try {
    clear();
  } catch {
    process.once('exit', clear);
  }
  let length = fstatSync(file).size;
  return {
    get length() {
      return length;
    },
    add: (bytes) => {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      length += bytes.length;
    },
    read: (from, count) => {
      const bytes = Buffer.alloc(count);
      let at = 0;
      while (at < count) {
        const got = readSync(file, bytes, at, count - at, from + at);
        if (got === 0) break;
        at += got;
      }
      return bytes.subarray(0, at);
    },
    close: () => {
      if (path !== undefined) fsyncSync(file);
      closeSync(file);
    },
  };
}
