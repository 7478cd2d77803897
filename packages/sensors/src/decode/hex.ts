/** Which texts are bytes in hexadecimal: two digits each, one blank between them or none. */
export const hexPattern = /^[0-9A-Fa-f]{2}(?: ?[0-9A-Fa-f]{2})*$/;

/** The bytes that a text in hexadecimal means; `undefined` when it is none. */
export function bytesOfHex(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!hexPattern.test(text)) return undefined;
  return Uint8Array.from(text.match(/[0-9A-Fa-f]{2}/g)!, (byte) => parseInt(byte, 16));
}

/** Bytes in hexadecimal, with a blank between them. */
export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0').toUpperCase()).join(' ');
}
