import { readFile } from 'node:fs/promises';
import type { Io } from '../../apps/cli/src/io.ts';
import { openStore } from '../../apps/cli/src/open-store.ts';

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

  get io(): Io {
    return {
      writeOut: (text) => {
        this.out += text;
      },
      writeError: (text) => {
        this.error += text;
      },
      readFile: (path) => {
        const content = this.files.get(path);
        if (content === undefined) return readFile(path);
        return Promise.resolve(typeof content === 'string' ? new TextEncoder().encode(content) : content);
      },
      writeFile: (path, content) => void this.files.set(path, content),
      readChunks: async function* (this: Io, path: string) {
        const bytes = await this.readFile(path);
        for (let at = 0; at < bytes.length; at += 1000) yield bytes.subarray(at, at + 1000);
      },
      makeFolder: (path) => void this.folders.add(path),
      today: () => '2026-11-29',
      drawSecret: () => `drawn-${(this.drawn += 1)}`,
      askSecret: (prompt) => {
        this.asked.push(prompt);
        return Promise.resolve(this.typed);
      },
      openStore,
      exists: (path) => this.files.has(path),
      width: this.width,
      watched: false,
      drawsBlocks: true,
    };
  }

  text(path: string): string {
    const content = this.files.get(path);
    if (typeof content !== 'string')
      throw new Error(`${path} was not written; there are ${[...this.files.keys()].join(', ')}`);
    return content;
  }
}
