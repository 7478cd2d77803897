import { fromBase64, toBase64 } from '../backup/base64.ts';
import type { Json } from '../document.ts';
import type { DocumentRow, KeyRow, StreamRow } from '../rows.ts';

/** One thing that happened to a store of files, in the order of the file. */
export type LogEntry =
  | { readonly op: 'store'; readonly version: number }
  | { readonly op: 'documents'; readonly rows: readonly DocumentRow[] }
  | { readonly op: 'stream'; readonly row: StreamRow }
  | { readonly op: 'closed'; readonly row: StreamRow; readonly closing: number }
  | { readonly op: 'key'; readonly row: KeyRow }
  | { readonly op: 'setting'; readonly name: string; readonly value: Json | Uint8Array }
  /** what could not be read when the file was written anew, and is not in it any more */
  | { readonly op: 'lost'; readonly ids: readonly string[] }
  /** streams of erased people, whose files are to be taken away; numbers of closings up to this one are used */
  | { readonly op: 'erased'; readonly streams: readonly string[]; readonly closing: number };

const text = (bytes: Uint8Array | null | undefined): string | null =>
  bytes instanceof Uint8Array ? toBase64(bytes) : null;
const bytes = (value: unknown): Uint8Array => fromBase64(value) ?? new Uint8Array(0);

/** The same with bytes as base64, at the places where bytes can be. */
function plain(entry: LogEntry): unknown {
  switch (entry.op) {
    case 'documents':
      return {
        op: entry.op,
        rows: entry.rows.map((row) => ('sealed' in row ? { ...row, sealed: text(row.sealed) } : row)),
      };
    case 'stream':
    case 'closed':
      return entry.row.sealed === undefined
        ? entry
        : { ...entry, row: { ...entry.row, sealed: text(entry.row.sealed) } };
    case 'key':
      return { op: entry.op, row: { ...entry.row, wrapped: text(entry.row.wrapped) } };
    case 'setting':
      return entry.value instanceof Uint8Array ? { op: entry.op, name: entry.name, bytes: text(entry.value) } : entry;
    default:
      return entry;
  }
}

/** An entry as bytes. */
export function entryBytes(entry: LogEntry): Uint8Array {
  return new TextEncoder().encode(JSON.stringify(plain(entry)));
}

/** The entry of bytes that {@link entryBytes} made. */
export function entryOf(content: Uint8Array): LogEntry {
  const entry = JSON.parse(new TextDecoder().decode(content)) as LogEntry & { readonly bytes?: string };
  switch (entry.op) {
    case 'documents':
      return {
        op: entry.op,
        rows: entry.rows.map((row) => ('sealed' in row ? { ...row, sealed: bytes(row.sealed) } : row)),
      };
    case 'stream':
    case 'closed':
      return entry.row.sealed === undefined
        ? entry
        : { ...entry, row: { ...entry.row, sealed: bytes(entry.row.sealed) } };
    case 'key': {
      const { wrapped } = entry.row;
      return { op: entry.op, row: { ...entry.row, wrapped: wrapped === null ? null : bytes(wrapped) } };
    }
    case 'setting':
      return entry.bytes === undefined ? entry : { op: entry.op, name: entry.name, value: bytes(entry.bytes) };
    default:
      return entry;
  }
}
