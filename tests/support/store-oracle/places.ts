import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase } from '../../../packages/storage/src/database.ts';
import { IndexedDbRows } from '../../../packages/storage/src/indexed-db-rows.ts';
import { MemoryRows } from '../../../packages/storage/src/memory-rows.ts';
import { FileRows } from '../../../packages/storage/src/node/file-rows.ts';
import { framesOf } from '../../../packages/storage/src/node/frames.ts';
import type { Rows } from '../../../packages/storage/src/rows.ts';
import { alterRows, freshName } from '../browser-database.ts';
import { freshFolder } from '../store-folder.ts';

/** A place in which rows lie, whatever becomes of the program. */
export interface Place {
  open(): Promise<Rows>;
  /** turns a byte of what was written of a document */
  alterDocument(id: string): Promise<void>;
  /** turns a byte of a piece of a stream */
  alterPiece(stream: string): Promise<void>;
  /** leaves something half written behind, as far as there can be such a thing */
  tear(): Promise<void>;
}

type Row = Record<string, unknown>;

/** A row with another content under the same keys. */
function altered(row: Row): Row {
  if (row['sealed'] instanceof Uint8Array) return { ...row, sealed: turned(row['sealed']) };
  return { ...row, body: { altered: row['body'] } };
}

function turned(bytes: Uint8Array, at = bytes.length - 1): Uint8Array {
  const other = Uint8Array.from(bytes);
  other[at] ^= 1;
  return other;
}

function memoryPlace(): Place {
  const rows = new MemoryRows();
  const inside = rows as unknown as { kept: Row[]; streamRows: Map<string, { pieces: Uint8Array[] }> };
  return {
    open: () => Promise.resolve(rows),
    alterDocument: (id) => {
      inside.kept = inside.kept.map((row) => (row['id'] === id ? altered(row) : row));
      return Promise.resolve();
    },
    alterPiece: (stream) => {
      const { pieces } = inside.streamRows.get(stream)!;
      pieces[0] = turned(pieces[0]);
      return Promise.resolve();
    },
    tear: () => Promise.resolve(),
  };
}

function browserPlace(): Place {
  const name = freshName();
  return {
    open: async () => new IndexedDbRows(await openDatabase(name)),
    alterDocument: (id) => alterRows<Row>(name, 'documents', (row) => (row['id'] === id ? altered(row) : row)),
    alterPiece: (stream) =>
      alterRows<{ stream: string; index: number; bytes: Uint8Array }>(name, 'pieces', (row) =>
        row.stream === stream && row.index === 0 ? { ...row, bytes: turned(row.bytes) } : row,
      ),
    tear: () => Promise.resolve(),
  };
}

function filePlace(): Place {
  const folder = freshFolder();
  const log = join(folder, 'records.log');
  return {
    open: () => FileRows.open(folder, false),
    alterDocument: (id) => {
      const bytes = readFileSync(log);
      const frame = framesOf(bytes).frames.find(({ content }) =>
        Buffer.from(content).includes(`{"op":"documents","rows":[{"id":"${id}"`),
      )!;
      // the last but the closing brackets: what it is stays readable
      bytes[frame.at + frame.length - 6] ^= 1;
      writeFileSync(log, bytes);
      return Promise.resolve();
    },
    alterPiece: (stream) => {
      const path = join(folder, 'streams', `${stream}.pieces`);
      const bytes = readFileSync(path);
      writeFileSync(path, turned(bytes, 26));
      return Promise.resolve();
    },
    tear: () => {
      appendFileSync(log, readFileSync(log).subarray(0, 25));
      return Promise.resolve();
    },
  };
}

export const places: Readonly<Record<string, () => Place>> = {
  memory: memoryPlace,
  browser: browserPlace,
  files: filePlace,
};
