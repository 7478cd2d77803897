import { StorageError } from '../errors.ts';

/** Bytes that WebCrypto takes. */
export type Bytes = Uint8Array<ArrayBuffer>;

const nonceLength = 12;
const text = new TextEncoder();

/** WebCrypto; rejects with `unavailable` where there is none, as on a page over plain http. */
export function subtle(): SubtleCrypto {
  const found = (globalThis.crypto as Crypto | undefined)?.subtle;
  if (found === undefined) {
    throw new StorageError(
      'unavailable',
      'There is no encryption here: a browser has it over https and on this machine.',
    );
  }
  return found;
}

/** Random bytes. */
export function random(length: number): Bytes {
  return globalThis.crypto.getRandomValues(new Uint8Array(length));
}

/** What a ciphertext belongs to, as one text that can be read in one way only. */
export type Belonging = readonly (string | number | null)[];

function parameters(nonce: Bytes, additionalData: Bytes): AesGcmParams {
  return { name: 'AES-GCM', iv: nonce, additionalData, tagLength: 128 };
}

const additional = (belongsTo: Belonging): Bytes => text.encode(JSON.stringify(belongsTo));

/** A key for AES-GCM that cannot be taken out again. */
export function importKey(raw: Bytes): Promise<CryptoKey> {
  return subtle().importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt']);
}

/** Encrypts under a new random nonce, which stands before the ciphertext; what it belongs to is authenticated with it. */
export async function encrypt(key: CryptoKey, plain: Uint8Array, belongsTo: Belonging): Promise<Bytes> {
  const nonce = random(nonceLength);
  const sealed = new Uint8Array(await subtle().encrypt(parameters(nonce, additional(belongsTo)), key, plain as Bytes));
  const whole = new Uint8Array(nonceLength + sealed.length);
  whole.set(nonce);
  whole.set(sealed, nonceLength);
  return whole;
}

/** Decrypts what {@link encrypt} made; undefined where it was altered, belongs to something else or has another key. */
export function decrypt(key: CryptoKey, sealed: Uint8Array, belongsTo: Belonging): Promise<Bytes | undefined> {
  return decryptBytes(key, sealed, additional(belongsTo));
}

/** The same with the additional data as bytes: nonce, ciphertext and tag as in NIST SP 800-38D, one after the other. */
export async function decryptBytes(key: CryptoKey, sealed: Uint8Array, more: Bytes): Promise<Bytes | undefined> {
  // what lies in a place that was altered may be anything
  if (!(sealed instanceof Uint8Array) || sealed.length < nonceLength) return undefined;
  const nonce = sealed.slice(0, nonceLength);
  try {
    return new Uint8Array(await subtle().decrypt(parameters(nonce, more), key, sealed.slice(nonceLength)));
  } catch (error) {
    // the one answer of AES-GCM to a tag that does not fit; anything else is no matter of the ciphertext
    if (error instanceof Error && error.name === 'OperationError') return undefined;
    throw error;
  }
}
