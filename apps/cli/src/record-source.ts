import { defaultSettings } from '@surae/analysis';
import { recordStudy, type Study } from '@surae/exchange';
import { DamagedBackupError, MemoryStore, StorageError } from '@surae/storage';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import { softwareName } from './software.ts';
import { UsageError } from './usage-error.ts';

/** The passphrase or recovery code in a file; undefined without a file. */
async function secretIn(file: string | undefined, io: Pick<Io, 'readFile'>): Promise<string | undefined> {
  if (file === undefined) return undefined;
  return new TextDecoder().decode(await readNamed(file, io)).replace(/\r?\n$/, '');
}

function reasonOf(path: string, error: StorageError): string {
  if (!(error instanceof DamagedBackupError)) return `${path}: ${error.message}`;
  const { documents, streams } = error.report;
  const missing = documents.missing.length + streams.missing.length;
  return `${path}: ${error.message} ${missing} of its parts are not whole`;
}

/**
 * What leaves of a whole record, from a backup of it. Nothing is written but what leaves: the backup is read into memory alone.
 *
 * @throws {@link UsageError} when it is damaged, or opened by another passphrase
 */
export async function backupStudy(
  { path, passphraseFile }: { readonly path: string; readonly passphraseFile: string | undefined },
  io: Pick<Io, 'readFile'>,
): Promise<Study> {
  const bytes = await readNamed(path, io);
  const secret = await secretIn(passphraseFile, io);
  const store = new MemoryStore();
  try {
    await store.restore(() => inOnePiece(bytes), secret === undefined ? {} : { secret });
  } catch (error) {
    if (error instanceof StorageError) throw new UsageError(reasonOf(path, error));
    throw error;
  }
  return recordStudy(await store.documents({}), {
    extent: { of: 'clinic' },
    settings: defaultSettings(),
    software: softwareName(),
    read: (id) => store.bytes(id),
  });
}

/** Bytes in one piece, as a file gives them. */
async function* inOnePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield await Promise.resolve(bytes);
}
