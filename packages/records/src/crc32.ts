/** Remainders of the 256 bytes for the reversed polynomial 0xEDB88320. Source: ISO/IEC 3309 and RFC 1952, section 8. */
const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = (rest >>> 1) ^ (rest & 1 ? 0xedb88320 : 0);
  return rest;
});

/** CRC-32 of bytes, from 0 to 4294967295: any burst of up to 32 altered bits is seen. Source: RFC 1952, section 8. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = remainders[(crc ^ byte) & 255]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
