import { crc32 } from './crc32.ts';
import { RecordError } from './errors.ts';
import type { Axis, Quantity } from './quantities.ts';

/** Samples as they arrived, all channels of one clock in step. */
export interface StreamBlock {
  readonly firstIndex: number;
  readonly deviceTimesS: Float64Array | null;
  readonly hostTimeMs: number;
  readonly channels: readonly {
    readonly quantity: Quantity;
    readonly axis: Axis;
    readonly unit: string;
    readonly samples: Float64Array;
  }[];
  /** samples of an earlier place, which came when later ones had been written already */
  readonly isLate?: true;
  /** which of several sources with clocks of their own, from 0; the first, or the only one, when left out */
  readonly source?: number;
}

/** First bytes of every block, so that a reader knows where it is. */
const mark = [0x53, 0x42, 0x31, 0x0a];
/** Mark, length of the head, length of the numbers, check of these two, check of head and numbers. */
const prefixBytes = mark.length + 16;

interface BlockHead {
  readonly firstIndex: number;
  readonly hostTimeMs: number;
  readonly count: number;
  readonly timed: boolean;
  readonly channels: readonly { readonly quantity: Quantity; readonly axis: Axis; readonly unit: string }[];
  readonly isLate?: true;
  readonly source?: number;
}

/** In place of samples: something to be known of the device that they come from. */
interface NoteHead {
  readonly note: string;
}

/**
 * A block as bytes that can be put one after the other: a prefix with lengths and checks (CRC-32), the head as JSON, then
 * times and samples as little-endian doubles.
 */
export function encodeBlock(block: StreamBlock): Uint8Array {
  const { firstIndex, deviceTimesS, hostTimeMs, channels, isLate, source } = block;
  const columns = [...(deviceTimesS === null ? [] : [deviceTimesS]), ...channels.map(({ samples }) => samples)];
  const count = columns[0]?.length ?? 0;
  if (columns.some(({ length }) => length !== count)) {
    throw new RecordError('invalid-document', { expected: 'columns of one length', actual: 'several lengths' });
  }
  const head: BlockHead = {
    firstIndex,
    hostTimeMs,
    count,
    timed: deviceTimesS !== null,
    channels: channels.map(({ quantity, axis, unit }) => ({ quantity, axis, unit })),
    ...(isLate === true ? { isLate } : {}),
    ...(source === undefined ? {} : { source }),
  };
  return encoded(head, columns);
}

/** A line on the device as bytes between blocks; it comes among the notes of the recording. */
export function encodeNote(note: string): Uint8Array {
  return encoded({ note }, []);
}

function encoded(head: BlockHead | NoteHead, columns: readonly Float64Array[]): Uint8Array {
  const headText = new TextEncoder().encode(JSON.stringify(head));
  const numbers = columns.reduce((sum, { length }) => sum + 8 * length, 0);
  const bytes = new Uint8Array(prefixBytes + headText.length + numbers);
  const view = new DataView(bytes.buffer);
  bytes.set(mark, 0);
  view.setUint32(mark.length, headText.length, true);
  view.setUint32(mark.length + 4, numbers, true);
  view.setUint32(mark.length + 8, crc32(bytes.subarray(mark.length, mark.length + 8)), true);
  bytes.set(headText, prefixBytes);
  let at = prefixBytes + headText.length;
  for (const column of columns) {
    for (const value of column) {
      view.setFloat64(at, value, true);
      at += 8;
    }
  }
  view.setUint32(mark.length + 12, crc32(bytes.subarray(prefixBytes)), true);
  return bytes;
}

/** Pieces of a stream put one after the other. */
export function joinPieces(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}

function wrongBytes(at: number, actual: string): RecordError {
  return new RecordError('invalid-document', { expected: `a block at byte ${at}`, actual });
}

/** What bytes of a stream hold, in the order in which they were written. */
export interface StreamContent {
  readonly blocks: readonly StreamBlock[];
  readonly notes: readonly string[];
}

/**
 * The whole blocks in bytes that {@link encodeBlock} wrote one after the other. A block that was cut off at the end is left
 * out: the program was killed while it wrote.
 *
 * @throws {@link RecordError} `invalid-document` where bytes are no block, or not those that were written
 */
export function decodeBlocks(pieces: readonly Uint8Array[]): StreamBlock[] {
  return [...decodeStream(joinPieces(pieces)).blocks];
}

/** The lines that {@link encodeNote} wrote between blocks; throws as {@link decodeBlocks} does. */
export function decodeNotes(pieces: readonly Uint8Array[]): string[] {
  return [...decodeStream(joinPieces(pieces)).notes];
}

/** All that bytes of a stream hold; throws as {@link decodeBlocks} does. */
export function decodeStream(bytes: Uint8Array): StreamContent {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const blocks: StreamBlock[] = [];
  const notes: string[] = [];
  let at = 0;
  while (at < bytes.length) {
    if (mark.some((value, i) => at + i < bytes.length && bytes[at + i] !== value)) throw wrongBytes(at, 'other bytes');
    const headAt = at + prefixBytes;
    if (headAt > bytes.length) break;
    const lengths = at + mark.length;
    // a wrong length would make the rest of the stream look cut off: it has a check of its own
    if (crc32(bytes.subarray(lengths, lengths + 8)) !== view.getUint32(lengths + 8, true)) {
      throw wrongBytes(at, 'altered lengths');
    }
    const headLength = view.getUint32(lengths, true);
    const next = headAt + headLength + view.getUint32(lengths + 4, true);
    if (next > bytes.length) break;
    if (crc32(bytes.subarray(headAt, next)) !== view.getUint32(lengths + 12, true))
      throw wrongBytes(at, 'altered bytes');
    const head = JSON.parse(new TextDecoder().decode(bytes.subarray(headAt, headAt + headLength))) as
      | BlockHead
      | NoteHead;
    at = next;
    if ('note' in head) {
      notes.push(head.note);
      continue;
    }
    let place = headAt + headLength;
    const column = (): Float64Array => {
      const values = Float64Array.from({ length: head.count }, (_, i) => view.getFloat64(place + 8 * i, true));
      place += 8 * head.count;
      return values;
    };
    const deviceTimesS = head.timed ? column() : null;
    const channels = head.channels.map((channel) => ({ ...channel, samples: column() }));
    const { firstIndex, hostTimeMs, source } = head;
    const late = head.isLate === true ? { isLate: true as const } : {};
    const from = source === undefined ? {} : { source };
    blocks.push({ firstIndex, hostTimeMs, deviceTimesS, channels, ...late, ...from });
  }
  return { blocks, notes };
}
