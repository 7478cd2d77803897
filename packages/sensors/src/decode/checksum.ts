/**
 * Checks of a frame. `sum8`: sum of the bytes modulo 256. `xor8`: exclusive or of the bytes. `crc16-ccitt`: polynomial 0x1021
 * from 0xFFFF, most significant bit first. `crc16-xmodem`: the same from 0. `crc32`: that of ISO/IEC 3309, as in zip files.
 */
export type ChecksumKind = 'sum8' | 'xor8' | 'crc16-ccitt' | 'crc16-xmodem' | 'crc32';

/** How many bytes each check takes. */
export const checksumBytes: Readonly<Record<ChecksumKind, number>> = {
  sum8: 1,
  xor8: 1,
  'crc16-ccitt': 2,
  'crc16-xmodem': 2,
  crc32: 4,
};

/** The check of bytes, a number without sign. Sources: ITU-T V.41 (polynomial 0x1021); ISO/IEC 3309 (crc32). */
export function checksum(kind: ChecksumKind, bytes: Uint8Array): number {
  switch (kind) {
    case 'sum8':
      return bytes.reduce((sum, byte) => (sum + byte) & 255, 0);
    case 'xor8':
      return bytes.reduce((all, byte) => all ^ byte, 0);
    case 'crc16-ccitt':
      return crc16(bytes, 0xffff);
    case 'crc16-xmodem':
      return crc16(bytes, 0);
    case 'crc32':
      return crc32(bytes);
  }
}

function crc16(bytes: Uint8Array, start: number): number {
  let crc = start;
  for (const byte of bytes) {
    crc ^= byte << 8;
    for (let bit = 0; bit < 8; bit += 1) crc = ((crc << 1) ^ (crc & 0x8000 ? 0x1021 : 0)) & 0xffff;
  }
  return crc;
}

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
