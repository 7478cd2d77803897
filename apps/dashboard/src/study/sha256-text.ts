import { sha256Hex } from '@surae/records';

/** SHA-256 of a text as it is saved, in UTF-8. */
export function sha256Text(text: string): string {
  return sha256Hex(new TextEncoder().encode(text));
}

/** SHA-256 of bytes, by the browser where it offers it: it is quicker. */
export async function sha256Bytes(bytes: Uint8Array): Promise<string> {
  // not offered where the page came over a plain connection
  const { subtle } = globalThis.crypto as { readonly subtle?: SubtleCrypto };
  if (subtle === undefined) return sha256Hex(bytes);
  const hash = new Uint8Array(await subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
