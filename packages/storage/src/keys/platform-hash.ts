import { bytesToHex } from '@noble/hashes/utils.js';
import type { StoredDocument } from '../document.ts';
import { hashedBytes, hashOfBytes } from '../seal.ts';
import { subtle } from './envelope.ts';

/** From here on the platform is the quicker one, which has to be waited for: a result is longer, nearly all else is shorter [bytes]; ours. */
const leastLength = 4096;

/** Whether a kept document still is what was kept; long ones are hashed by WebCrypto, which is there wherever something is encrypted. */
export async function isWholeByPlatform(document: StoredDocument): Promise<boolean> {
  const bytes = hashedBytes(document);
  if (bytes.length < leastLength) return document.hash === hashOfBytes([bytes]);
  return document.hash === bytesToHex(new Uint8Array(await subtle().digest('SHA-256', bytes)));
}
