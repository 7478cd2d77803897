import { mkdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { joined } from '../joined.ts';
import type { PieceRow } from '../rows.ts';
import { AppendFile, syncFolder } from './append-file.ts';
import { isMissing } from './file-error.ts';
import { frameOf, framesOf } from './frames.ts';

/** The bytes of recordings: a file for each, a frame for each piece with its number before it. */
export class PieceFiles {
  private readonly folder: string;
  private readonly open = new Map<string, AppendFile>();

  constructor(folder: string) {
    this.folder = join(folder, 'streams');
  }

  async make(): Promise<void> {
    await mkdir(this.folder, { recursive: true });
  }

  async append(stream: string, from: number, pieces: readonly Uint8Array[]): Promise<void> {
    const frames = pieces.map((piece, i) => {
      const content = new Uint8Array(4 + piece.length);
      new DataView(content.buffer).setUint32(0, from + i, true);
      content.set(piece, 4);
      return frameOf(content);
    });
    await (await this.file(stream)).append(joined(frames));
  }

  /** The pieces that match their hash, and whether something stands behind the last of them. */
  async read(stream: string): Promise<{ readonly pieces: readonly PieceRow[]; readonly isHalf: boolean }> {
    const bytes = await this.bytes(stream);
    const { frames, end } = framesOf(bytes);
    const pieces = frames.map(({ content }) => ({
      index: new DataView(content.buffer, content.byteOffset).getUint32(0, true),
      // a slice of what Node reads would be no copy
      bytes: Uint8Array.from(content.subarray(4)),
    }));
    return { pieces, isHalf: end < bytes.length };
  }

  /** Lets go of the file of a stream that is closed. */
  async letGo(stream: string): Promise<void> {
    const file = this.open.get(stream);
    this.open.delete(stream);
    await file?.close();
  }

  async remove(streams: readonly string[]): Promise<void> {
    for (const stream of streams) {
      await this.letGo(stream);
      await rm(this.path(stream), { force: true });
    }
    await syncFolder(this.folder);
  }

  async close(): Promise<void> {
    for (const stream of [...this.open.keys()]) await this.letGo(stream);
  }

  private path(stream: string): string {
    if (!/^[0-9a-f]{32}$/.test(stream)) throw new RangeError(`The id of a stream was expected; "${stream}" came.`);
    return join(this.folder, `${stream}.pieces`);
  }

  private async bytes(stream: string): Promise<Uint8Array> {
    try {
      return await readFile(this.path(stream));
    } catch (error) {
      if (isMissing(error)) return new Uint8Array(0);
      throw error;
    }
  }

  private async file(stream: string): Promise<AppendFile> {
    const open = this.open.get(stream);
    if (open !== undefined) return open;
    // what was half written when the program was killed was never acknowledged
    const { end } = framesOf(await this.bytes(stream));
    const file = await AppendFile.at(this.path(stream), end);
    await syncFolder(this.folder);
    this.open.set(stream, file);
    return file;
  }
}
