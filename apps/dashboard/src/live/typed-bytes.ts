import { hexOf, type SensorDocument } from '@surae/sensors';

const lineEnd = 10;

/**
 * Bytes that came, as one would type them where a description is written: hexadecimal for a packet, lines as they are for a stream of
 * lines, and hexadecimal after 0x for any other stream. Undefined where no line is whole yet.
 */
export function typedBytes({ link }: SensorDocument, bytes: Uint8Array): string | undefined {
  if (link.kind === 'bluetooth') return hexOf(bytes);
  if (link.stream.kind !== 'lines' || !bytes.every(isText)) return `0x ${hexOf(bytes)}`;
  // one listens from the middle of a line on, and the last may not be over
  const whole = bytes.slice(bytes.indexOf(lineEnd) + 1, bytes.lastIndexOf(lineEnd));
  return bytes.includes(lineEnd) && whole.length > 0 ? new TextDecoder().decode(whole) : undefined;
}

/** A sign of a line: printable, or what ends and parts it. */
function isText(byte: number): boolean {
  return (byte >= 32 && byte < 127) || [9, lineEnd, 13].includes(byte);
}
