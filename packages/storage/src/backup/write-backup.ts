import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Codec } from '../codec.ts';
import { isReadable } from '../readable.ts';
import type { Rows } from '../rows.ts';
import { hashOfBytes, newId } from '../seal.ts';
import { type BackupHeader, type BackupItem, backupVersion, itemLine } from './backup-line.ts';
import { toBase64 } from './base64.ts';
import { lineOf } from './lines.ts';

const pageSize = 200;

/** Bytes of a recording in one line, about [bytes]. */
const lineBytes = 256 * 1024;

interface Listed {
  readonly documents: readonly string[];
  readonly streams: readonly string[];
  /** place of the last document that belongs in the backup */
  readonly last: number;
}

async function listed(rows: Rows): Promise<Listed> {
  const documents: string[] = [];
  let last = 0;
  for (;;) {
    const page = await rows.documentsAfter(last, pageSize);
    documents.push(...page.map(({ id }) => id));
    last = page.at(-1)?.sequence ?? last;
    if (page.length < pageSize) break;
  }
  return { documents, last, streams: (await rows.streams()).map(({ id }) => id) };
}

async function* documentItems(rows: Rows, codec: Codec, { documents, last }: Listed): AsyncGenerator<BackupItem> {
  const told = new Set<string>();
  for (let after = 0; after < last; ) {
    const page = (await rows.documentsAfter(after, pageSize)).filter(({ sequence }) => sequence <= last);
    const opened = await codec.openDocuments(page);
    for (const [i, document] of opened.entries()) {
      const { id, whose } = page[i]!;
      if (!isReadable(document)) continue;
      told.add(id);
      yield { is: 'document', document, whose: whose ?? null };
    }
    if (page.length === 0) break;
    after = page.at(-1)!.sequence;
  }
  for (const id of documents) if (!told.has(id)) yield { is: 'lost', id };
}

/** Pieces in lines of about the same length. */
function* pieceItems(stream: string, pieces: readonly Uint8Array[]): Generator<BackupItem> {
  let from = 0;
  while (from < pieces.length) {
    let length = 0;
    let to = from;
    while (to < pieces.length && (to === from || length + pieces[to]!.length <= lineBytes)) {
      length += pieces[to]!.length;
      to += 1;
    }
    yield { is: 'pieces', stream, from, bytes: pieces.slice(from, to).map(toBase64) };
    from = to;
  }
}

async function* streamItems(rows: Rows, codec: Codec, ids: readonly string[]): AsyncGenerator<BackupItem> {
  for (const id of ids) {
    const row = await rows.streamOf(id);
    const facts = row === undefined ? 'altered' : await codec.openStream(row);
    const pieces = row === undefined ? [] : await codec.openPieces(row, await rows.pieces(id));
    const isWhole = pieces.every(isReadable) && (row?.pieces === null || pieces.length === row?.pieces);
    if (!isReadable(facts) || !isWhole) {
      yield { is: 'lost', id };
      continue;
    }
    const readable = pieces.filter(isReadable);
    if (facts.sha256 !== null && hashOfBytes(readable) !== facts.sha256) {
      yield { is: 'lost', id };
      continue;
    }
    yield { is: 'stream', ...facts, pieces: readable.length };
    yield* pieceItems(id, readable);
  }
}

async function* items(rows: Rows, codec: Codec): AsyncGenerator<BackupItem> {
  const all = await listed(rows);
  const { documents, streams } = all;
  const parts = Math.max(1, Math.ceil(Math.max(documents.length, streams.length) / pageSize));
  for (let part = 0; part < parts; part += 1) {
    const of = (ids: readonly string[]): readonly string[] => ids.slice(part * pageSize, (part + 1) * pageSize);
    yield { is: 'ids', parts, documents: of(documents), streams: of(streams) };
  }
  yield* documentItems(rows, codec, all);
  yield* streamItems(rows, codec, streams);
}

/** A backup of everything, line by line; never more of it in memory than one recording. */
export async function* writeBackup(rows: Rows, codec: Codec): AsyncGenerator<Uint8Array, void, undefined> {
  const id = newId();
  const made = await codec.newBackupKey(id);
  const key = made?.key ?? null;
  const hash = sha256.create();
  const header: BackupHeader = { suraeBackup: backupVersion, id, keys: made?.keys ?? null };
  let n = 0;
  const first = lineOf(JSON.stringify(header));
  hash.update(first);
  yield first;
  for await (const item of items(rows, codec)) {
    n += 1;
    const line = await itemLine(item, n, id, key);
    hash.update(line);
    yield line;
  }
  yield itemLine({ is: 'end', sha256: bytesToHex(hash.digest()) }, n + 1, id, key);
}
