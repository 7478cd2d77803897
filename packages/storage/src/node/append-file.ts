import { open } from 'node:fs/promises';

type FileHandle = Awaited<ReturnType<typeof open>>;

/**
 * Waits until the names in a folder are on the disk; a system that cannot do that with a folder does it by itself, or not at all.
 */
export async function syncFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // as under Windows
  }
}

/** A file that only grows: what was appended is on the disk, whole, or not there at all. */
export class AppendFile {
  private readonly handle: FileHandle;
  /** where the next bytes go; anything behind it was never acknowledged */
  private size: number;
  /** whether something that failed may lie behind the end */
  private isSpoilt = false;

  private constructor(handle: FileHandle, size: number) {
    this.handle = handle;
    this.size = size;
  }

  /** Opens a file for appending at a place, behind which nothing counts; makes it where it is not there. */
  static async at(path: string, size: number): Promise<AppendFile> {
    const handle = await open(path, size === 0 ? 'w+' : 'r+');
    try {
      await handle.truncate(size);
      await handle.sync();
    } catch (error) {
      await handle.close();
      throw error;
    }
    return new AppendFile(handle, size);
  }

  /** Appends; gives the place at which the bytes begin. */
  async append(bytes: Uint8Array): Promise<number> {
    if (this.isSpoilt) await this.handle.truncate(this.size);
    this.isSpoilt = true;
    const at = this.size;
    for (let done = 0; done < bytes.length; ) {
      const { bytesWritten } = await this.handle.write(bytes, done, bytes.length - done, at + done);
      done += bytesWritten;
    }
    await this.handle.sync();
    this.isSpoilt = false;
    this.size = at + bytes.length;
    return at;
  }

  async read(at: number, length: number): Promise<Uint8Array> {
    const bytes = new Uint8Array(length);
    let done = 0;
    while (done < length) {
      const { bytesRead } = await this.handle.read(bytes, done, length - done, at + done);
      if (bytesRead === 0) break;
      done += bytesRead;
    }
    return bytes.subarray(0, done);
  }

  get length(): number {
    return this.size;
  }

  close(): Promise<void> {
    return this.handle.close();
  }
}
