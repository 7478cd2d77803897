import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { OwnedDocument } from '../document.ts';
import { StorageError } from '../errors.ts';
import type { ForeignStream, StreamFacts } from '../record-store.ts';
import { hashOfBytes, isWhole } from '../seal.ts';
import { type BackupKeys, backupKeysFrom } from './backup-keys.ts';
import { type BackupHeader, type BackupItem, backupVersion, type IdsItem, itemOf, parsed } from './backup-line.ts';
import type { BackupProblem } from './backup-report.ts';
import { fromBase64 } from './base64.ts';
import { linesOf, textOf } from './lines.ts';

/** What comes out of a backup: whole things only, and what is wrong with the rest. */
export type BackupNews =
  | IdsItem
  | { readonly is: 'document'; readonly owned: OwnedDocument }
  | { readonly is: 'stream'; readonly stream: ForeignStream }
  | { readonly is: 'lost'; readonly id: string }
  | { readonly is: 'problem'; readonly problem: BackupProblem }
  | { readonly is: 'header'; readonly isEncrypted: boolean }
  | { readonly is: 'bytes'; readonly bytes: number };

/** Gives the key of a backup that is encrypted. */
export type BackupOpener = (keys: BackupKeys, backup: string) => Promise<CryptoKey>;

/** How a backup begins, behind the hash of its first line. */
const beginning = '{"suraeBackup":';

function headerOf(line: Uint8Array | undefined): BackupHeader {
  const text = line === undefined ? undefined : textOf(line);
  if (text === undefined) {
    const start = new TextDecoder().decode((line ?? new Uint8Array(0)).subarray(65, 65 + beginning.length));
    if (start === beginning) throw new StorageError('damaged-backup', 'The first line of this backup was altered.');
    throw new StorageError('no-backup', 'A backup was expected; this file does not begin as one.');
  }
  const header = parsed(text) as Partial<BackupHeader> | undefined | null;
  if (typeof header?.suraeBackup !== 'number' || typeof header.id !== 'string') {
    throw new StorageError('no-backup', 'A backup was expected; this file does not begin as one.');
  }
  if (header.suraeBackup > backupVersion) {
    throw new StorageError(
      'newer-version',
      `This backup is of version ${header.suraeBackup}; this software reads up to version ${backupVersion}.`,
    );
  }
  return { suraeBackup: header.suraeBackup, id: header.id, keys: header.keys ?? null };
}

/** A stream whose pieces are coming. */
interface Coming {
  readonly facts: StreamFacts;
  readonly count: number;
  readonly pieces: Uint8Array[];
}

/** Gathers the pieces of one stream after another. */
class StreamGatherer {
  private coming: Coming | null = null;

  begin({ id, label, whose, sha256: hash, pieces }: Extract<BackupItem, { is: 'stream' }>): ForeignStream | null {
    this.coming = { facts: { id, label, whose, sha256: hash }, count: pieces, pieces: [] };
    return this.whole();
  }

  add({ stream, from, bytes }: Extract<BackupItem, { is: 'pieces' }>): ForeignStream | 'wrong' | null {
    const { coming } = this;
    const pieces = bytes.map(fromBase64);
    if (coming === null || coming.facts.id !== stream || coming.pieces.length !== from || pieces.includes(undefined)) {
      return 'wrong';
    }
    coming.pieces.push(...pieces.filter((piece) => piece !== undefined));
    return this.whole();
  }

  /** What came of the stream is no use without the rest. */
  drop(): void {
    this.coming = null;
  }

  private whole(): ForeignStream | null {
    if (this.coming === null || this.coming.pieces.length < this.coming.count) return null;
    const { facts, count, pieces } = this.coming;
    this.coming = null;
    const isSame = pieces.length === count && (facts.sha256 === null || hashOfBytes(pieces) === facts.sha256);
    return isSame ? { ...facts, pieces } : null;
  }
}

const problem = (line: number, code: BackupProblem['code']): BackupNews => ({ is: 'problem', problem: { line, code } });

/**
 * Reads a backup to its end, whatever is wrong with it, and gives what is whole. Rejects with `no-backup`, `newer-version`,
 * `damaged-backup` where its first line is gone, and with whatever the opener of its key does.
 */
export async function* readBackup(
  source: AsyncIterable<Uint8Array>,
  open: BackupOpener,
): AsyncGenerator<BackupNews, void, undefined> {
  const hash = sha256.create();
  let bytes = 0;
  const lines = linesOf(source);
  const first = await lines.next();
  const header = headerOf(first.done === true ? undefined : first.value);
  yield { is: 'header', isEncrypted: header.keys !== null };
  const key = header.keys === null ? null : await open(backupKeysFrom(header.keys), header.id);
  const count = (line: Uint8Array): void => {
    hash.update(line);
    hash.update(Uint8Array.of(10));
    bytes += line.length + 1;
  };
  count(first.value!);
  const streams = new StreamGatherer();
  let expected = 1;
  let number = 1;
  let isEnded = false;
  for await (const line of lines) {
    number += 1;
    if (isEnded) {
      yield problem(number, 'after-end');
      break;
    }
    const text = textOf(line);
    const read = text === undefined ? undefined : await itemOf(text, header.id, key);
    if (read === undefined) {
      yield problem(number, 'altered');
      streams.drop();
      expected += 1;
      count(line);
      continue;
    }
    if (read.n !== expected) {
      yield problem(number, 'out-of-place');
      streams.drop();
    }
    if (read.n < expected) {
      count(line);
      continue;
    }
    expected = read.n + 1;
    const { item } = read;
    if (item.is === 'end') {
      isEnded = true;
      if (item.sha256 !== bytesToHex(hash.digest())) yield problem(number, 'other-bytes');
      bytes += line.length + 1;
      continue;
    }
    count(line);
    yield* newsOf(item, number, streams);
  }
  if (!isEnded) yield problem(number + 1, 'cut-off');
  yield { is: 'bytes', bytes };
}

function* newsOf(
  item: Exclude<BackupItem, { is: 'end' }>,
  line: number,
  streams: StreamGatherer,
): Generator<BackupNews, void, undefined> {
  if (item.is === 'document') {
    if (isWhole(item.document)) yield { is: 'document', owned: { document: item.document, whose: item.whose } };
    else yield problem(line, 'altered');
  } else if (item.is === 'stream' || item.is === 'pieces') {
    const stream = item.is === 'stream' ? streams.begin(item) : streams.add(item);
    if (stream === 'wrong') yield problem(line, 'out-of-place');
    else if (stream !== null) yield { is: 'stream', stream };
  } else yield item;
}
