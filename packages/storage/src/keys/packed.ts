import { deflateSync, inflateSync } from 'fflate';

/** Below this, inflating again takes longer than everything else about a document: a list of people is nothing but such [bytes]; ours, measured. */
const leastLength = 1024;

/** Bytes made smaller where that helps; the first byte tells: 0 as they were, 1 deflated (RFC 1951). */
export function pack(bytes: Uint8Array): Uint8Array {
  const deflated = bytes.length < leastLength ? bytes : deflateSync(bytes);
  const isSmaller = deflated.length < bytes.length;
  const packed = new Uint8Array(1 + (isSmaller ? deflated.length : bytes.length));
  packed[0] = isSmaller ? 1 : 0;
  packed.set(isSmaller ? deflated : bytes, 1);
  return packed;
}

/** The other way round; throws on a first byte that {@link pack} does not write. */
export function unpack(packed: Uint8Array): Uint8Array {
  const [form] = packed;
  if (form === 0) return Uint8Array.from(packed.subarray(1));
  if (form === 1) return inflateSync(packed.subarray(1));
  throw new RangeError(`Packed bytes begin with 0 or 1; ${String(form)} came.`);
}
