import { RecordError } from './errors.ts';
import { sha256Hex } from './hash.ts';
import { type Placement, quantities, type Side, siUnits } from './quantities.ts';
import { freezeRecording, type RecordedGroup, type Recording } from './recording.ts';
import { decodeStream, joinPieces, type StreamBlock } from './stream-codec.ts';
import { gapsIn } from './timeline.ts';

/** The clock of one source on the time line of the recording: time there = `offsetS` + `rate` * time of the source. */
export interface StreamClock {
  readonly offsetS: number;
  readonly rate: number;
}

/** What a stream does not say of one of its sources. */
export interface StreamSource {
  readonly side?: Side;
  readonly placement?: Placement;
  /** null when it is not known: the samples stay among the bytes and have no place in the recording */
  readonly clock: StreamClock | null;
}

/** What a stream does not say of itself. */
export interface StreamContext {
  readonly side?: Side;
  readonly placement?: Placement;
  readonly notes?: readonly string[];
  /** the sources after the first, in their order; the clock of the first is the time line */
  readonly others?: readonly StreamSource[];
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

/** Times on the line of the recording; those of the line itself are left as they are, to the last bit. */
function onLine(timesS: Float64Array, clock: StreamClock | null): Float64Array {
  if (clock === null || (clock.offsetS === 0 && clock.rate === 1)) return timesS;
  return timesS.map((timeS) => clock.offsetS + clock.rate * timeS);
}

/** The channels of one source. */
function groupOf(all: readonly StreamBlock[], { side, placement, clock }: StreamSource): RecordedGroup {
  const blocks = inOrder(all);
  const first = blocks[0];
  if (first === undefined) throw new RecordError('too-few-samples', { expected: 'at least one block', actual: 'none' });
  const times = blocks.map(({ deviceTimesS }) => {
    if (deviceTimesS === null) throw new RecordError('no-time', { expected: 'times of the device', actual: 'none' });
    return deviceTimesS;
  });
  const ownTimesS = concatenated(times);
  const timesS = onLine(ownTimesS, clock);
  const gaps = gapsIn(timesS, first.channels);
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
  return { timesS, timeUnit: { source: 's', si: 's' }, channels, gaps };
}

/**
 * The recording that a stream of blocks holds, raw bytes kept. Samples that came late stand where they belong, and notes of the
 * device among those of the recording. Each source becomes a group with its own times; those after the first are laid on the
 * time line of the first, and left out where their clock is not known.
 *
 * @throws {@link RecordError} `no-time` when a block has no device times, `invalid-document` when the blocks of a source differ
 * in their channels or are of a source that is not told of, and as for the times of any recording
 */
export function recordingFromStream(pieces: readonly Uint8Array[], context: StreamContext = {}): Recording {
  const bytes = joinPieces(pieces);
  const { blocks, notes: told } = decodeStream(bytes);
  const { others = [], notes = [], ...first } = context;
  const sources: StreamSource[] = [{ ...first, clock: { offsetS: 0, rate: 1 } }, ...others];
  const stranger = blocks.find(({ source = 0 }) => sources[source] === undefined);
  if (stranger !== undefined) {
    throw new RecordError('invalid-document', {
      expected: `blocks of ${sources.length} sources`,
      actual: `one of source ${(stranger.source ?? 0) + 1}`,
    });
  }
  const groups = sources.flatMap((one, n) => {
    const own = blocks.filter(({ source = 0 }) => source === n);
    // of the others nothing may have come; of the first that is an error
    return one.clock === null || (n > 0 && own.length === 0) ? [] : [groupOf(own, one)];
  });
  return freezeRecording({
    source: { sha256: sha256Hex(bytes), byteLength: bytes.length, bytes },
    groups,
    deviceNotes: [...notes, ...told],
    unusedColumns: [],
  });
}
