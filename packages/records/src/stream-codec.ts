import { crc32 } from './crc32.ts';
import { RecordError } from './errors.ts';
import { listGaps } from './gaps.ts';
import { sha256Hex } from './hash.ts';
import { type Axis, type Placement, type Quantity, quantities, type Side, siUnits } from './quantities.ts';
import { freezeRecording, type Recording } from './recording.ts';
import { checkTimeline } from './timeline.ts';

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
}

/** What a stream does not say of itself. */
export interface StreamContext {
  readonly side?: Side;
  readonly placement?: Placement;
  readonly notes?: readonly string[];
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
  const { firstIndex, deviceTimesS, hostTimeMs, channels, isLate } = block;
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

function joined(pieces: readonly Uint8Array[]): Uint8Array {
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
interface StreamContent {
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
  return [...decodeStream(joined(pieces)).blocks];
}

/** The lines that {@link encodeNote} wrote between blocks; throws as {@link decodeBlocks} does. */
export function decodeNotes(pieces: readonly Uint8Array[]): string[] {
  return [...decodeStream(joined(pieces)).notes];
}

function decodeStream(bytes: Uint8Array): StreamContent {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const blocks: StreamBlock[] = [];
  const notes: string[] = [];
  let at = 0;
  while (at < bytes.length) {
    if (mark.some((value, i) => at + i < bytes.length && bytes[at + i] !== value)) throw wrongBytes(at, 'other bytes');
    const from = at + prefixBytes;
    if (from > bytes.length) break;
    const lengths = at + mark.length;
    // a wrong length would make the rest of the stream look cut off: it has a check of its own
    if (crc32(bytes.subarray(lengths, lengths + 8)) !== view.getUint32(lengths + 8, true)) {
      throw wrongBytes(at, 'altered lengths');
    }
    const headLength = view.getUint32(lengths, true);
    const next = from + headLength + view.getUint32(lengths + 4, true);
    if (next > bytes.length) break;
    if (crc32(bytes.subarray(from, next)) !== view.getUint32(lengths + 12, true)) throw wrongBytes(at, 'altered bytes');
    const head = JSON.parse(new TextDecoder().decode(bytes.subarray(from, from + headLength))) as BlockHead | NoteHead;
    at = next;
    if ('note' in head) {
      notes.push(head.note);
      continue;
    }
    let place = from + headLength;
    const column = (): Float64Array => {
      const values = Float64Array.from({ length: head.count }, (_, i) => view.getFloat64(place + 8 * i, true));
      place += 8 * head.count;
      return values;
    };
    const deviceTimesS = head.timed ? column() : null;
    const channels = head.channels.map((channel) => ({ ...channel, samples: column() }));
    const late = head.isLate === true ? { isLate: true as const } : {};
    blocks.push({ firstIndex: head.firstIndex, hostTimeMs: head.hostTimeMs, deviceTimesS, channels, ...late });
  }
  return { blocks, notes };
}

/** Blocks that came too late, put where they belong: before the first that begins after them. */
function inOrder(blocks: readonly StreamBlock[]): readonly StreamBlock[] {
  if (!blocks.some(({ isLate }) => isLate)) return blocks;
  const ordered: StreamBlock[] = [];
  const startOf = ({ deviceTimesS }: StreamBlock): number => deviceTimesS?.[0] ?? 0;
  for (const block of blocks) {
    let at = ordered.length;
    if (block.isLate === true) while (at > 0 && startOf(ordered[at - 1]!) > startOf(block)) at--;
    ordered.splice(at, 0, block);
  }
  return ordered;
}

function concatenated(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/**
 * The recording that a stream of blocks holds, raw bytes kept. Samples that came late stand where they belong, and notes of the
 * device among those of the recording.
 *
 * @throws {@link RecordError} `no-time` when a block has no device times, `invalid-document` when blocks differ in their
 * channels, and as for the times of any recording
 */
export function recordingFromStream(pieces: readonly Uint8Array[], context: StreamContext = {}): Recording {
  const bytes = joined(pieces);
  const content = decodeStream(bytes);
  const blocks = inOrder(content.blocks);
  const { side, placement, notes = [] } = context;
  const first = blocks[0];
  if (first === undefined) throw new RecordError('too-few-samples', { expected: 'at least one block', actual: 'none' });
  const times = blocks.map(({ deviceTimesS }) => {
    if (deviceTimesS === null) throw new RecordError('no-time', { expected: 'times of the device', actual: 'none' });
    return deviceTimesS;
  });
  const timesS = concatenated(times);
  const medianS = checkTimeline(timesS);
  const channels = first.channels.map((channel, k) => {
    const samples = concatenated(
      blocks.map((block) => {
        const same = block.channels[k];
        const alike = same?.quantity === channel.quantity && same.axis === channel.axis && same.unit === channel.unit;
        if (!alike || block.channels.length !== first.channels.length || !quantities.includes(channel.quantity)) {
          throw new RecordError('invalid-document', {
            expected: `the same channels in every block, ${channel.quantity} among them`,
            actual: block.channels.map(({ quantity }) => quantity).join(', '),
          });
        }
        return same.samples;
      }),
    );
    return {
      quantity: channel.quantity,
      axis: channel.axis,
      samples,
      unit: { source: channel.unit, si: siUnits[channel.quantity] },
      column: channel.axis === null ? channel.quantity : `${channel.quantity} ${channel.axis}`,
      ...(side === undefined ? {} : { side }),
      ...(placement === undefined ? {} : { placementDeclared: placement }),
    };
  });
  return freezeRecording({
    source: { sha256: sha256Hex(bytes), byteLength: bytes.length, bytes },
    groups: [{ timesS, timeUnit: { source: 's', si: 's' }, channels, gaps: listGaps(timesS, medianS) }],
    deviceNotes: [...notes, ...content.notes],
    unusedColumns: [],
  });
}
