import { crc32 } from 'node:zlib';
import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { ZipFault } from './zip-fault.ts';

/** Largest file of a zip that is read: as for files that lie in no zip [bytes]. */
const LARGEST = 2 ** 31 - 1;

interface OpenZip {
  readonly zip: ZipFile;
  readonly entries: ReadonlyMap<string, Entry>;
}

async function opened(path: string): Promise<OpenZip> {
  let zip: ZipFile;
  try {
    zip = await openPromise(path, { lazyEntries: true, autoClose: false });
  } catch (error) {
    if (error instanceof Error && 'syscall' in error) throw error;
    throw new ZipFault(`this zip cannot be opened: ${error instanceof Error ? error.message : String(error)}`);
  }
  try {
    const entries = new Map<string, Entry>();
    for await (const entry of zip.eachEntry()) {
      if (!entry.fileName.endsWith('/')) entries.set(entry.fileName, entry);
    }
    return { zip, entries };
  } catch (error) {
    zip.close();
    throw new ZipFault(`this zip is damaged: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Files in zips, read where they lie: nothing is unpacked to the disk. The list of the last zip is kept, for its files come in a row. */
export class ZipReader {
  #path: string | undefined;
  #open: Promise<OpenZip> | undefined;

  /** Names of the files in a zip. @throws {@link ZipFault} where it is damaged */
  async names(path: string): Promise<string[]> {
    return [...(await this.#zip(path)).entries.keys()];
  }

  /**
   * The bytes of one file in a zip, a piece at a time, and checked against the sum that the zip holds.
   *
   * @throws {@link ZipFault} where the file is not there, is locked by a password or does not match its sum
   */
  async *chunks(path: string, name: string): AsyncGenerator<Uint8Array> {
    const { zip, entries } = await this.#zip(path);
    const entry = entries.get(name);
    if (entry === undefined) throw new ZipFault('there is no such file in the zip');
    if (entry.isEncrypted()) throw new ZipFault('this file is locked by a password');
    if (entry.uncompressedSize > LARGEST) throw new ZipFault('the file is larger than 2 GB');
    let sum = 0;
    try {
      for await (const chunk of await zip.openReadStreamPromise(entry)) {
        sum = crc32(chunk as Uint8Array, sum);
        yield chunk as Uint8Array;
      }
    } catch (error) {
      throw new ZipFault(`this file of the zip is damaged: ${error instanceof Error ? error.message : String(error)}`);
    }
    if (sum !== entry.crc32) throw new ZipFault('this file of the zip is damaged: its check sum is another');
  }

  async read(path: string, name: string): Promise<Uint8Array> {
    const pieces: Uint8Array[] = [];
    for await (const chunk of this.chunks(path, name)) pieces.push(chunk);
    return Buffer.concat(pieces);
  }

  #zip(path: string): Promise<OpenZip> {
    if (this.#path !== path || this.#open === undefined) {
      void this.#open?.then(({ zip }) => zip.close()).catch(() => undefined);
      this.#path = path;
      this.#open = opened(path);
    }
    return this.#open;
  }
}
