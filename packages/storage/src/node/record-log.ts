import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { joined } from '../joined.ts';
import type { StoreProblem } from '../record-store.ts';
import { AppendFile, syncFolder } from './append-file.ts';
import { isMissing } from './file-error.ts';
import { frameAt, frameOf, framesOf } from './frames.ts';
import { entryBytes, entryOf, type LogEntry } from './log-entry.ts';
import { filesVersion, LogIndex } from './log-index.ts';

/** Name of the file; where it is not, there is no store. */
export const logName = 'records.log';

async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (error) {
    if (isMissing(error)) return new Uint8Array(0);
    throw error;
  }
}

/** Ids that can still be read in a stretch that was altered: what was told there is not trusted. */
function idsIn(bytes: Uint8Array): string[] {
  const text = new TextDecoder().decode(bytes);
  const found = [...text.matchAll(/\{"id":"([0-9a-f]{32})"/g)].map(([, id]) => id!);
  return found.length > 0 ? found : [logName];
}

/** The file in which everything but the bytes of recordings is written, entry by entry. */
export class RecordLog {
  index = new LogIndex();
  /** what was found damaged when the file was read */
  problems: StoreProblem[] = [];
  private readonly folder: string;
  private file: AppendFile | null = null;
  private bytes = { length: 0, ino: 0 };
  /** the file as it was read last; kept by whoever only reads */
  private content: Uint8Array | null = null;

  constructor(folder: string) {
    this.folder = folder;
  }

  private get path(): string {
    return join(this.folder, logName);
  }

  /** Reads the file; whoever writes also cuts off what was half written, and keeps it aside. */
  async open(writes: boolean): Promise<void> {
    const bytes = await this.load();
    if (!writes) return;
    const { end } = framesOf(bytes);
    if (end < bytes.length) {
      await writeFile(join(this.folder, 'half-written'), bytes.subarray(end));
    }
    this.file = await AppendFile.at(this.path, end);
    this.content = null;
    await syncFolder(this.folder);
    if (end === 0) await this.append({ op: 'store', version: filesVersion });
  }

  /** Takes in what another program wrote since; nothing where this one writes. */
  async catchUp(): Promise<void> {
    if (this.file !== null) return;
    try {
      const { size, ino } = await stat(this.path);
      if (size === this.bytes.length && ino === this.bytes.ino) return;
    } catch (error) {
      if (isMissing(error)) return;
      throw error;
    }
    await this.load();
  }

  async append(entry: LogEntry): Promise<void> {
    const frame = frameOf(entryBytes(entry));
    const at = await this.writer.append(frame);
    this.index.take(entry, at, frame.length);
  }

  /** The entry of a frame; undefined where it was altered since. */
  async entryAt(at: number, length: number): Promise<LogEntry | undefined> {
    const bytes = this.content !== null ? this.content.subarray(at, at + length) : await this.writer.read(at, length);
    const frame = frameAt(bytes, 0);
    return frame === undefined ? undefined : entryOf(frame.content);
  }

  /** Writes the file anew, each entry changed or left out, and some behind them; all of it or nothing. */
  async rewrite(change: (entry: LogEntry) => LogEntry | null, behind: readonly LogEntry[]): Promise<void> {
    const bytes = await readFile(this.path);
    const { frames, damaged } = framesOf(bytes);
    const kept = frames.map(({ content }) => change(entryOf(content))).filter((entry) => entry !== null);
    // what cannot be read may be of somebody who is erased: it goes, and that it was there stays told
    const ids = damaged.flatMap(({ from, to }) => idsIn(bytes.subarray(from, to)));
    const lost: LogEntry[] = ids.length === 0 ? [] : [{ op: 'lost', ids }];
    const draft = `${this.path}.new`;
    const file = await AppendFile.at(draft, 0);
    try {
      await file.append(joined([...kept, ...lost, ...behind].map((entry) => frameOf(entryBytes(entry)))));
    } finally {
      await file.close();
    }
    await this.writer.close();
    this.file = null;
    await rename(draft, this.path);
    await syncFolder(this.folder);
    await rm(join(this.folder, 'half-written'), { force: true });
    await this.open(true);
  }

  async close(): Promise<void> {
    await this.file?.close();
    this.file = null;
  }

  private get writer(): AppendFile {
    if (this.file === null) throw Object.assign(new Error('The store was let go of.'), { code: 'EBADF' });
    return this.file;
  }

  private async load(): Promise<Uint8Array> {
    const bytes = await bytesOf(this.path);
    const { frames, damaged, end } = framesOf(bytes);
    const index = new LogIndex();
    for (const { at, length, content } of frames) index.take(entryOf(content), at, length);
    this.index = index;
    const altered = [...index.lost, ...damaged.flatMap(({ from, to }) => idsIn(bytes.subarray(from, to)))];
    this.problems = altered.map((id) => ({ id, code: 'altered' as const }));
    if (end < bytes.length) this.problems.push({ id: logName, code: 'half-written' });
    this.content = bytes;
    const { ino } = bytes.length === 0 ? { ino: 0 } : await stat(this.path);
    this.bytes = { length: bytes.length, ino };
    return bytes;
  }
}
