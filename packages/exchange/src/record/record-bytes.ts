import { decodeBlocks, encodeBlock, joinPieces, type Recording, recordingFromStream, sha256Hex } from '@surae/records';

/** A stream of bytes as a store gives it. */
export interface RecordBytes {
  readonly pieces: readonly Uint8Array[];
  /** null where it was never closed */
  readonly sha256: string | null;
}

/** Reads a stream of the record; undefined where there is none. */
export type ReadBytes = (bytesId: string) => Promise<RecordBytes | undefined>;

/** What several streams hold as one recording: a block that was cut off at the end of one is left out. */
function oneRecording(streams: readonly RecordBytes[]): Recording {
  const pieces =
    streams.length === 1
      ? streams[0]!.pieces
      : streams.flatMap((stream) => decodeBlocks(stream.pieces).map(encodeBlock));
  return recordingFromStream(pieces);
}

/** Everything that is to be known of what was recorded in one trial or, in its order, in the trials of a leg. */
export interface RecordedStreams {
  /** of the bytes: of the stream, or of the streams one after the other; null where a stream is missing */
  readonly sha256: string | null;
  /** what the recording says of its device; empty where it cannot be read */
  readonly notes: readonly string[];
  /** whether it can be read as samples */
  readonly isReadable: boolean;
}

async function streamsOf(ids: readonly string[], read: ReadBytes): Promise<RecordBytes[] | undefined> {
  const streams: RecordBytes[] = [];
  for (const id of ids) {
    const stream = await read(id);
    if (stream === undefined) return undefined;
    streams.push(stream);
  }
  return streams.length === 0 ? undefined : streams;
}

/** Looks at streams without keeping them. */
export async function lookAt(ids: readonly string[], read: ReadBytes): Promise<RecordedStreams> {
  const streams = await streamsOf(ids, read);
  if (streams === undefined) return { sha256: null, notes: [], isReadable: false };
  const [first] = streams;
  const sha256 =
    streams.length === 1 && first!.sha256 !== null
      ? first!.sha256
      : sha256Hex(joinPieces(streams.flatMap(({ pieces }) => pieces)));
  try {
    return { sha256, notes: oneRecording(streams).deviceNotes, isReadable: true };
  } catch {
    // what cannot be read leaves as bytes, and the table says that it has no samples
    return { sha256, notes: [], isReadable: false };
  }
}

/** The recording that streams hold. */
export async function recordingOf(ids: readonly string[], read: ReadBytes): Promise<Recording> {
  const streams = await streamsOf(ids, read);
  return oneRecording(streams ?? []);
}

/** The bytes of streams, one after the other, as they are kept. */
export async function bytesOf(ids: readonly string[], read: ReadBytes): Promise<Uint8Array> {
  const streams = await streamsOf(ids, read);
  return joinPieces((streams ?? []).flatMap(({ pieces }) => pieces));
}
