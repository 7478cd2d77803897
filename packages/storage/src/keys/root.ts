import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import type { Json } from '../document.ts';
import { StorageError } from '../errors.ts';
import { type Belonging, type Bytes, decrypt, encrypt, random, subtle } from './envelope.ts';
import { isCost, type PassphraseCost, passphraseKey } from './passphrase.ts';
import { looksLikeRecoveryCode, readRecoveryCode } from './recovery-code.ts';

// The root is 256 random bits that encrypt nothing themselves: keys of one purpose each are derived from it. It is written down
// twice, wrapped by the key of the passphrase and by that of the recovery code, so that either opens everything and neither
// change of them touches what is kept.

/** Version of the way in which keys are kept. */
const keysVersion = 1;

/** What a store says about its keys: nothing in it is secret. */
export interface VaultHeader {
  readonly version: number;
  /** random id of the store: what is encrypted belongs to it */
  readonly store: string;
  readonly passphrase: { readonly cost: PassphraseCost; readonly salt: string; readonly wrapped: string };
  readonly recovery: { readonly salt: string; readonly wrapped: string };
}

const text = new TextEncoder();

/** A key of one purpose, from one that encrypts nothing itself (HKDF, RFC 5869). */
export async function keyFor(purpose: string, from: Bytes, salt: Bytes): Promise<CryptoKey> {
  const root = await subtle().importKey('raw', from, 'HKDF', false, ['deriveKey']);
  const derivation = { name: 'HKDF', hash: 'SHA-256', salt, info: text.encode(`surae ${purpose}`) };
  return subtle().deriveKey(derivation, root, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
}

export const newRoot = (): Bytes => random(32);
export const newSalt = (): Bytes => random(16);

function belongsTo(store: string, way: 'passphrase' | 'recovery', cost: PassphraseCost | null): Belonging {
  return ['root', keysVersion, store, way, ...(cost === null ? [] : [cost.memoryKiB, cost.passes, cost.lanes])];
}

/** The root under a passphrase. */
export async function wrapByPassphrase(
  root: Bytes,
  store: string,
  passphrase: string,
  { memoryKiB, passes, lanes }: PassphraseCost,
): Promise<VaultHeader['passphrase']> {
  const salt = newSalt();
  const cost = { memoryKiB, passes, lanes };
  const key = await passphraseKey(passphrase, salt, cost);
  const wrapped = await encrypt(key, root, belongsTo(store, 'passphrase', cost));
  return { cost, salt: bytesToHex(salt), wrapped: bytesToHex(wrapped) };
}

/** The root under a recovery code. */
export async function wrapByCode(root: Bytes, store: string, code: Bytes): Promise<VaultHeader['recovery']> {
  const salt = newSalt();
  const key = await keyFor('recovery', code, salt);
  const wrapped = await encrypt(key, root, belongsTo(store, 'recovery', null));
  return { salt: bytesToHex(salt), wrapped: bytesToHex(wrapped) };
}

const isHex = (value: unknown, bytes: number): boolean =>
  typeof value === 'string' && value.length === 2 * bytes && /^[0-9a-f]*$/.test(value);

/** Nonce, root and tag. */
const wrappedLength = 12 + 32 + 16;

/** What a store says about its keys, read from what lies there. */
export function headerFrom(value: Json | Uint8Array): VaultHeader {
  const header = value as unknown as VaultHeader;
  const { version, store, passphrase, recovery } = (header ?? {}) as Partial<VaultHeader>;
  if (typeof version === 'number' && version > keysVersion) {
    throw new StorageError('newer-version', 'The keys of this store were written by a newer version of this software.');
  }
  const isWhole =
    version === keysVersion &&
    isHex(store, 16) &&
    isHex(passphrase?.salt, 16) &&
    isHex(passphrase?.wrapped, wrappedLength) &&
    isCost(passphrase?.cost ?? { memoryKiB: 0, passes: 0, lanes: 0 }) &&
    isHex(recovery?.salt, 16) &&
    isHex(recovery?.wrapped, wrappedLength);
  if (!isWhole) throw new StorageError('altered', 'What this store says about its keys was altered.');
  return header;
}

/** The root, by the passphrase or the recovery code; rejects with `wrong-passphrase` or `mistyped-code`. */
export async function openRoot(header: VaultHeader, secret: string): Promise<Bytes> {
  const { store, passphrase, recovery } = header;
  const isCode = looksLikeRecoveryCode(secret);
  const code = isCode ? readRecoveryCode(secret) : undefined;
  if (code !== undefined && 'bytes' in code) {
    const key = await keyFor('recovery', code.bytes, hexToBytes(recovery.salt));
    const root = await decrypt(key, hexToBytes(recovery.wrapped), belongsTo(store, 'recovery', null));
    if (root !== undefined) return root;
  }
  if (secret !== '') {
    const key = await passphraseKey(secret, hexToBytes(passphrase.salt), passphrase.cost);
    const root = await decrypt(key, hexToBytes(passphrase.wrapped), belongsTo(store, 'passphrase', passphrase.cost));
    if (root !== undefined) return root;
  }
  if (code !== undefined && 'wrongGroups' in code) {
    throw new StorageError('mistyped-code', `Something is wrong in these groups: ${code.wrongGroups.join(', ')}.`);
  }
  throw new StorageError('wrong-passphrase', 'Neither the passphrase nor the recovery code opens this store.');
}
