import { createHash } from 'node:crypto';
import type { Files } from './node-files.ts';
import type { ExpectedBytes } from './pool.ts';
import { readFault } from './read-fault.ts';

/** Files of which one has to hold certain bytes: what it held is looked at while it is read, so that it is read once. */
export class CheckedFiles implements Files {
  readonly #path: string;
  readonly #expected: ExpectedBytes;
  readonly #files: Files;
  #found: string | undefined;
  #unread: string | undefined;

  constructor(path: string, expected: ExpectedBytes, files: Files) {
    this.#path = path;
    this.#expected = expected;
    this.#files = files;
  }

  readonly readFile = async (path: string): Promise<Uint8Array> => {
    const { bytes } = this.#expected;
    if (bytes !== undefined) return this.#taken(bytes);
    try {
      return this.#taken(await this.#files.readFile(path));
    } catch (error) {
      this.#unread = readFault(error);
      throw error;
    }
  };

  readonly readChunks = (path: string): AsyncIterable<Uint8Array> => this.#chunks(path);

  /** Why what was read is not what was expected; undefined where it is. What was not read to its end is read now. */
  async fault(): Promise<string | undefined> {
    if (this.#unread === undefined && this.#found === undefined) {
      const chunks = this.#chunks(this.#path)[Symbol.asyncIterator]();
      // the fault is in hand when it is thrown
      while ((await chunks.next().catch(() => ({ done: true }))).done !== true);
    }
    if (this.#unread !== undefined) return this.#unread;
    return this.#found === this.#expected.sha256
      ? undefined
      : 'it holds other bytes than when the list was made; the run knows it as it was';
  }

  #taken(bytes: Uint8Array): Uint8Array {
    this.#found = createHash('sha256').update(bytes).digest('hex');
    return bytes;
  }

  async *#chunks(path: string): AsyncGenerator<Uint8Array> {
    const { bytes } = this.#expected;
    if (bytes !== undefined) {
      yield this.#taken(bytes);
      return;
    }
    const hash = createHash('sha256');
    try {
      for await (const chunk of this.#files.readChunks(path)) {
        hash.update(chunk);
        yield chunk;
      }
    } catch (error) {
      this.#unread = readFault(error);
      throw error;
    }
    this.#found = hash.digest('hex');
  }
}
