import { sha256 } from '@noble/hashes/sha2.js';

// A file of frames: a mark, the length, the first half of the SHA-256 of the content, the content. A frame counts when all of it is
// there and matches; what is shorter than it says, at the end of the file, was being written when the power went.

const mark = Uint8Array.of(0x73, 0x52, 0x46, 0x31);
const hashLength = 16;
const headLength = mark.length + 4 + hashLength;

/** Longest content of a frame [bytes]. */
const longest = 0x7fff_ffff;

/** A content as a frame. */
export function frameOf(content: Uint8Array): Uint8Array {
  const frame = new Uint8Array(headLength + content.length);
  frame.set(mark);
  new DataView(frame.buffer).setUint32(mark.length, content.length, true);
  frame.set(sha256(content).subarray(0, hashLength), mark.length + 4);
  frame.set(content, headLength);
  return frame;
}

/** A content and where its frame lies. */
export interface Frame {
  readonly at: number;
  readonly length: number;
  readonly content: Uint8Array;
}

export interface Frames {
  readonly frames: readonly Frame[];
  /** stretches that are no frame, with a frame behind them or as long as they say: something that was written and altered */
  readonly damaged: readonly { readonly from: number; readonly to: number }[];
  /** where the last frame ends */
  readonly end: number;
}

/** The frame that begins at a place; undefined where none does. */
export function frameAt(bytes: Uint8Array, at: number): Frame | undefined {
  if (at + headLength > bytes.length || mark.some((byte, i) => bytes[at + i] !== byte)) return undefined;
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(at + mark.length, true);
  if (length > longest || at + headLength + length > bytes.length) return undefined;
  const content = bytes.subarray(at + headLength, at + headLength + length);
  const hash = sha256(content);
  for (let i = 0; i < hashLength; i += 1) if (bytes[at + mark.length + 4 + i] !== hash[i]) return undefined;
  return { at, length: headLength + length, content };
}

/** The next place at or after another at which a frame begins; -1 without one. */
function nextFrame(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(mark[0]!, from); at >= 0; at = bytes.indexOf(mark[0]!, at + 1)) {
    if (frameAt(bytes, at) !== undefined) return at;
  }
  return -1;
}

/** Where a frame would end that has its mark and all of its length; -1 where it is half written. */
function wholeLength(bytes: Uint8Array, at: number): number {
  if (at + headLength > bytes.length || mark.some((byte, i) => bytes[at + i] !== byte)) return -1;
  const end = at + headLength + new DataView(bytes.buffer, bytes.byteOffset).getUint32(at + mark.length, true);
  return end <= bytes.length ? end : -1;
}

/** All frames of a file. */
export function framesOf(bytes: Uint8Array): Frames {
  const frames: Frame[] = [];
  const damaged: { from: number; to: number }[] = [];
  let at = 0;
  while (at < bytes.length) {
    const frame = frameAt(bytes, at);
    if (frame !== undefined) {
      frames.push(frame);
      at += frame.length;
      continue;
    }
    const found = nextFrame(bytes, at + 1);
    const next = found < 0 ? wholeLength(bytes, at) : found;
    if (next < 0) break;
    damaged.push({ from: at, to: next });
    at = next;
  }
  return { frames, damaged, end: at };
}
