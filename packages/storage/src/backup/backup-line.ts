import type { Json, OwnedDocument } from '../document.ts';
import { decrypt, encrypt } from '../keys/envelope.ts';
import { pack, unpack } from '../keys/packed.ts';
import type { StreamFacts } from '../record-store.ts';
import { isId } from '../seal.ts';
import type { BackupKeys } from './backup-keys.ts';
import { fromBase64, toBase64 } from './base64.ts';
import { lineOf } from './lines.ts';

/** Version of the form of a backup. */
export const backupVersion = 1;

/** The first line: what the file is. */
export interface BackupHeader {
  readonly suraeBackup: number;
  /** random id of this backup */
  readonly id: string;
  /** null where it lies open */
  readonly keys: BackupKeys | null;
}

/** One of so many parts of the list of what belongs in the backup. */
export interface IdsItem {
  readonly is: 'ids';
  readonly parts: number;
  readonly documents: readonly string[];
  readonly streams: readonly string[];
}

/** What one of the other lines tells. */
export type BackupItem =
  /** ids of documents and streams that belong in it, before anything else, in as many lines as it takes */
  | IdsItem
  | ({ readonly is: 'document' } & OwnedDocument)
  | ({ readonly is: 'stream'; readonly pieces: number } & StreamFacts)
  /** pieces of the stream before, from an index on, in base64 */
  | { readonly is: 'pieces'; readonly stream: string; readonly from: number; readonly bytes: readonly string[] }
  /** what could not be read when the backup was made */
  | { readonly is: 'lost'; readonly id: string }
  /** the end, with the SHA-256 over every byte before this line */
  | { readonly is: 'end'; readonly sha256: string };

const encoder = new TextEncoder();
const decoder = new TextDecoder();
const belongsTo = (backup: string, n: number): readonly (string | number)[] => ['backup-line', 1, backup, n];

/** The line of an item in its place; encrypted where there is a key. */
export async function itemLine(
  item: BackupItem,
  n: number,
  backup: string,
  key: CryptoKey | null,
): Promise<Uint8Array> {
  if (key === null) return lineOf(JSON.stringify({ n, item }));
  const sealed = await encrypt(key, pack(encoder.encode(JSON.stringify(item))), belongsTo(backup, n));
  return lineOf(JSON.stringify({ n, sealed: toBase64(sealed) }));
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;
const isOwner = (value: unknown): boolean => value === null || isText(value);
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isPlace = (value: unknown): boolean => isText(value) && isId(value);

function isDocument(value: unknown): boolean {
  const { id, kind, schema, about, author, at, body, hash } = (value ?? {}) as Record<string, unknown>;
  return (
    isPlace(id) &&
    isText(kind) &&
    isCount(schema) &&
    isOwner(about) &&
    isText(author) &&
    isText(at) &&
    body !== undefined &&
    isText(hash)
  );
}

/** Whether something is an item, in the form in which it is written. */
function isItem(value: unknown): value is BackupItem {
  const one = (value ?? {}) as Record<string, unknown>;
  switch (one['is']) {
    case 'ids':
      return (
        isCount(one['parts']) &&
        isList(one['documents']) &&
        isList(one['streams']) &&
        [...one['documents'], ...one['streams']].every(isPlace)
      );
    case 'document':
      return isDocument(one['document']) && isOwner(one['whose']);
    case 'stream':
      return (
        isPlace(one['id']) &&
        isText(one['label']) &&
        isOwner(one['whose']) &&
        isOwner(one['sha256']) &&
        isCount(one['pieces'])
      );
    case 'pieces':
      return isPlace(one['stream']) && isCount(one['from']) && isList(one['bytes']);
    case 'lost':
      return isPlace(one['id']);
    case 'end':
      return isText(one['sha256']);
    default:
      return false;
  }
}

/** JSON; undefined where it is none. */
export function parsed(text: string): Json | undefined {
  try {
    return JSON.parse(text) as Json;
  } catch {
    return undefined;
  }
}

/** The item of a line and its place; undefined where it is none, or its seal was broken. */
export async function itemOf(
  text: string,
  backup: string,
  key: CryptoKey | null,
): Promise<{ readonly n: number; readonly item: BackupItem } | undefined> {
  const { n, item, sealed } = (parsed(text) ?? {}) as { n?: unknown; item?: unknown; sealed?: unknown };
  if (!isCount(n)) return undefined;
  if (key === null) return isItem(item) ? { n, item } : undefined;
  const bytes = fromBase64(sealed);
  const packed = bytes === undefined ? undefined : await decrypt(key, bytes, belongsTo(backup, n));
  const opened = packed === undefined ? undefined : parsed(decoder.decode(unpack(packed)));
  return isItem(opened) ? { n, item: opened } : undefined;
}
