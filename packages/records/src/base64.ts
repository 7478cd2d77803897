const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const codes = Uint8Array.from(alphabet, (letter) => letter.charCodeAt(0));
const EQUALS = 61;
const NONE = 255;
const values = new Uint8Array(256).fill(NONE);
for (const [value, code] of codes.entries()) values[code] = value;

/** Bytes in base64 with padding. Source: RFC 4648, section 4. */
export function encodeBase64(bytes: Uint8Array): string {
  const out = new Uint8Array(4 * Math.ceil(bytes.length / 3));
  let at = 0;
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const triple = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    out[at] = codes[triple >> 18]!;
    out[at + 1] = codes[(triple >> 12) & 63]!;
    out[at + 2] = left > 1 ? codes[(triple >> 6) & 63]! : EQUALS;
    out[at + 3] = left > 2 ? codes[triple & 63]! : EQUALS;
    at += 4;
  }
  return new TextDecoder().decode(out);
}

/** The bytes that a base64 text holds; `undefined` when it is not exactly what {@link encodeBase64} writes. */
export function decodeBase64(text: string): Uint8Array | undefined {
  if (text.length % 4 !== 0) return undefined;
  const padding = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const letters = text.length - padding;
  const bytes = new Uint8Array((3 * text.length) / 4 - padding);
  let held = 0;
  let bits = 0;
  let at = 0;
  for (let i = 0; i < letters; i += 1) {
    const code = text.charCodeAt(i);
    const value = code < 256 ? values[code]! : NONE;
    if (value === NONE) return undefined;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at] = (held >> bits) & 255;
      at += 1;
    }
  }
  const unused = held & ((1 << bits) - 1);
  return unused === 0 ? bytes : undefined;
}
