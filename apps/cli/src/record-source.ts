import { defaultSettings } from '@surae/analysis';
import { recordStudy, type Study } from '@surae/exchange';
import { DamagedBackupError, MemoryStore, type RecordStore, StorageError, type StoreProblem } from '@surae/storage';
import type { ExportSource } from './export-arguments.ts';
import type { Io } from './io.ts';
import { readNamed } from './read-named.ts';
import { softwareName } from './software.ts';
import { UsageError } from './usage-error.ts';

/** Where a record as a whole is read from. */
export type RecordSource = Exclude<ExportSource, { kind: 'manifest' }>;

/** A record as it leaves, and what of it is not whole; recordings are read until it is closed. */
export interface OpenRecord {
  readonly study: Study;
  readonly refusals: readonly string[];
  readonly close: () => void;
}

type RecordIo = Pick<Io, 'readFile' | 'askSecret' | 'openStore'>;

/** The passphrase or recovery code in a file, else as it is typed. */
async function secretOf({ path, passphraseFile }: RecordSource, io: RecordIo): Promise<string> {
  if (passphraseFile !== undefined) {
    return new TextDecoder().decode(await readNamed(passphraseFile, io)).replace(/\r?\n$/, '');
  }
  const typed = await io.askSecret(`Passphrase or recovery code of ${path}: `);
  if (typed === undefined) {
    throw new UsageError(`${path} is encrypted: name a file that holds the passphrase with --passphrase-file`);
  }
  return typed;
}

function reasonOf(path: string, error: StorageError): string {
  if (!(error instanceof DamagedBackupError)) return `${path}: ${error.message}`;
  const { documents, streams } = error.report;
  const missing = documents.missing.length + streams.missing.length;
  return `${path}: ${error.message} ${missing} of its parts are not whole`;
}

const PROBLEMS: Readonly<Record<StoreProblem['code'], string>> = {
  altered: 'expected what was kept, got something that was altered since; it is left out',
  'piece-missing': 'expected all pieces of a recording, got some; what is whole of it leaves',
  'key-missing': 'expected the key to it, got none; it is left out',
  'half-written': 'expected a whole entry, got one that was cut off while it was written; it was never acknowledged',
};

/** A backup read into memory: nothing is written. */
async function fromBackup(source: RecordSource, io: RecordIo): Promise<RecordStore> {
  const bytes = await readNamed(source.path, io);
  const restored = async (secret?: string): Promise<RecordStore> => {
    const store = new MemoryStore();
    await store.restore(() => inOnePiece(bytes), secret === undefined ? {} : { secret });
    return store;
  };
  if (source.passphraseFile !== undefined) return restored(await secretOf(source, io));
  try {
    return await restored();
  } catch (error) {
    if (!(error instanceof StorageError) || error.code !== 'locked') throw error;
    return restored(await secretOf(source, io));
  }
}

/**
 * What leaves of a whole record, from a backup of it or from the folder where it lies. What is read stays as it is.
 *
 * @throws {@link UsageError} when there is none, it is of a newer version or damaged, or opened by another passphrase
 */
export async function openRecord(source: RecordSource, io: RecordIo): Promise<OpenRecord> {
  const { kind, path } = source;
  try {
    const store =
      kind === 'backup' ? await fromBackup(source, io) : await io.openStore(path, () => secretOf(source, io));
    const problems = kind === 'backup' ? [] : await store.problems();
    const study = await recordStudy(await store.documents({}), {
      extent: { of: 'clinic' },
      settings: defaultSettings(),
      software: softwareName(),
      read: (id) => store.bytes(id),
    });
    const refusals = problems.map(({ id, code }) => `${path}, ${id}: ${PROBLEMS[code]}`);
    return { study, refusals, close: () => store.close() };
  } catch (error) {
    if (error instanceof StorageError) throw new UsageError(reasonOf(path, error));
    throw error;
  }
}

/** Bytes in one piece, as a file gives them. */
async function* inOnePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield await Promise.resolve(bytes);
}
