import { joinPieces } from '@surae/records';
import { unzipSync, Zip, ZipDeflate } from 'fflate';
import { ExchangeError } from '../errors.ts';
import { inBundleOrder } from './bundle-order.ts';
import type { ExportFile } from './export-file.ts';

/** Packs one file after the other, and hands over what is packed at once: nothing of a file has to stay. */
export class ZipPacker {
  private readonly zip: Zip;

  /** @param take - is given the bytes of the zip in order, a piece at a time */
  constructor(take: (piece: Uint8Array) => void) {
    this.zip = new Zip((error, piece) => {
      if (error !== null) throw error;
      take(piece);
    });
  }

  add({ name, bytes }: ExportFile): void {
    const entry = new ZipDeflate(name, { level: 6 });
    // the first instant that the format knows, on whichever clock: no time is told
    entry.mtime = new Date(1980, 0, 1);
    this.zip.add(entry);
    entry.push(bytes, true);
  }

  end(): void {
    this.zip.end();
  }
}

/** One file of all files: in the order of a bundle, at a fixed time, so that equal content gives equal bytes. */
export function zipped(files: readonly ExportFile[]): Uint8Array<ArrayBuffer> {
  const pieces: Uint8Array[] = [];
  const packer = new ZipPacker((piece) => pieces.push(piece));
  for (const file of [...files].sort(inBundleOrder)) packer.add(file);
  packer.end();
  return joinPieces(pieces);
}

/**
 * The files of a zip in the order of their names.
 *
 * @throws {@link ExchangeError} `bad-file` when it is none
 */
export function unzipped(bytes: Uint8Array, file: string): ExportFile[] {
  let entries: Record<string, Uint8Array>;
  try {
    entries = unzipSync(bytes);
  } catch (cause) {
    throw new ExchangeError('bad-file', { file, expected: 'a zip', actual: 'other bytes' }, { cause });
  }
  return Object.entries(entries)
    .filter(([name]) => !name.endsWith('/'))
    .map(([name, content]) => ({ name, bytes: content as Uint8Array<ArrayBuffer> }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}
