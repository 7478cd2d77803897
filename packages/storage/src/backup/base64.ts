const chunkLength = 0x8000;

/** Bytes as base64 (RFC 4648). */
export function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += chunkLength) {
    binary += String.fromCharCode(...bytes.subarray(at, at + chunkLength));
  }
  return btoa(binary);
}

/** Bytes from base64; undefined where it is none. */
export function fromBase64(text: unknown): Uint8Array<ArrayBuffer> | undefined {
  if (typeof text !== 'string' || text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return undefined;
  return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
}
