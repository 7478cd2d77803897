import { ExchangeError } from '../errors.ts';

/** Letters that stand in an address as they are: base64url of RFC 4648, section 5, without padding. */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** CRC-16 with the polynomial 0x1021 from 0xffff: it finds any one wrong byte, and any two wrong bits. */
function checkOf(bytes: Uint8Array): readonly [number, number] {
  let crc = 0xffff;
  for (const byte of bytes) {
    crc ^= byte << 8;
    for (let bit = 0; bit < 8; bit++) crc = crc & 0x8000 ? ((crc << 1) ^ 0x1021) & 0xffff : (crc << 1) & 0xffff;
  }
  return [crc >> 8, crc & 0xff];
}

/** The same as one number. */
export function checkNumber(bytes: Uint8Array): number {
  const [high, low] = checkOf(bytes);
  return 256 * high + low;
}

/** Bytes as a text for an address or a code to be read by a camera, with a check at its end. */
export function sealedCode(bytes: Uint8Array): string {
  const all = [...bytes, ...checkOf(bytes)];
  let text = '';
  for (let at = 0; at < all.length; at += 3) {
    const [a = 0, b = 0, c = 0] = all.slice(at, at + 3);
    const bits = (a << 16) | (b << 8) | c;
    const letters = Math.min(4, all.length - at + 1);
    for (let k = 0; k < letters; k++) text += LETTERS.charAt((bits >> (18 - 6 * k)) & 63);
  }
  return text;
}

/**
 * The bytes of such a text; spaces and breaks around and in it are passed over, as they come from copying.
 *
 * @throws {@link ExchangeError} `bad-file` for other letters, or where the check is not that of the bytes
 */
export function openedCode(text: string): Uint8Array<ArrayBuffer> {
  const bad = (expected: string, actual: string): ExchangeError =>
    new ExchangeError('bad-file', { file: 'code', expected, actual });
  const letters = [...text.replace(/\s/g, '')].map((letter) => LETTERS.indexOf(letter));
  if (letters.includes(-1)) throw bad('letters, digits, - and _', 'others');
  if (letters.length % 4 === 1) throw bad('a whole code', 'a part of one');
  const bytes: number[] = [];
  for (let at = 0; at < letters.length; at += 4) {
    const part = letters.slice(at, at + 4);
    const bits = part.reduce((sum, letter, k) => sum | (letter << (18 - 6 * k)), 0);
    for (let k = 0; k < part.length - 1; k++) bytes.push((bits >> (16 - 8 * k)) & 255);
  }
  const inside = Uint8Array.from(bytes.slice(0, -2));
  const [high, low] = checkOf(inside);
  if (bytes.length < 3 || bytes.at(-2) !== high || bytes.at(-1) !== low)
    throw bad('a code without a fault', 'a damaged one');
  // one text for one content: letters that say more than the bytes are no code
  if (sealedCode(inside) !== text.replace(/\s/g, '')) throw bad('a code without a fault', 'a damaged one');
  return inside;
}
