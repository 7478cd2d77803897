import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, randomBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Json, NewDocument, StoredDocument } from './document.ts';

/** JSON with the keys of every object in the order of their code units: equal values give equal text (RFC 8785, strings and numbers as JSON.stringify writes them). */
export function canonicalJson(value: Json): string {
  if (typeof value === 'number' && Number.isFinite(value)) return `${value}`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  // one text that grows: lists of members and their texts cost twice the time where a result is read for the first time
  let inside = '';
  if (Array.isArray(value)) {
    for (const one of value as readonly Json[]) inside += `${inside === '' ? '' : ','}${canonicalJson(one)}`;
    return `[${inside}]`;
  }
  const members = value as Readonly<Record<string, Json>>;
  for (const name of Object.keys(members).sort()) {
    inside += `${inside === '' ? '' : ','}${JSON.stringify(name)}:${canonicalJson(members[name]!)}`;
  }
  return `{${inside}}`;
}

/** SHA-256 of bytes in lower-case hexadecimal. */
export function hashOfBytes(pieces: readonly Uint8Array[]): string {
  const hash = sha256.create();
  for (const piece of pieces) hash.update(piece);
  return bytesToHex(hash.digest());
}

/** An id that nobody else has: 128 random bits. */
export function newId(): string {
  return bytesToHex(randomBytes(16));
}

/** Everything of a document that its hash stands for, as bytes. */
export function hashedBytes(document: Omit<StoredDocument, 'hash' | 'sequence'>): Uint8Array<ArrayBuffer> {
  const { id, kind, schema, about, author, at, body } = document;
  return utf8ToBytes(canonicalJson({ id, kind, schema, about, author, at, body }));
}

function hashOfDocument(document: Omit<StoredDocument, 'hash' | 'sequence'>): string {
  return hashOfBytes([hashedBytes(document)]);
}

/** A document with its id and its hash, ready to be kept. */
export function seal(document: NewDocument, id = newId()): Omit<StoredDocument, 'sequence'> {
  const { kind, schema, about, author, at, body } = document;
  const plain = { id, kind, schema, about, author, at, body: JSON.parse(JSON.stringify(body)) as Json };
  return { ...plain, hash: hashOfDocument(plain) };
}

/** Whether a kept document still is what was kept. */
export function isWhole(document: StoredDocument): boolean {
  return document.hash === hashOfDocument(document);
}

/** Whether a text has the form of an id. */
export function isId(text: string): boolean {
  return /^[0-9a-f]{32}$/.test(text);
}
