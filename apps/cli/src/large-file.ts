import { closeSync, fstatSync, openSync, readSync, statSync } from 'node:fs';
import type { Beside } from '@surae/analysis';
import { type HalvedTable, halveTable, joinedRecording, readHalf } from '@surae/records';
import { hashedAs, type Source } from '@surae/study';
import { sha256 } from './fingerprints.ts';
import { SecondThread } from './second-thread.ts';

/** From here on a second thread is taken to be worth its start: ours, reckoned and not measured. */
const LARGE_BYTES = 32 * 2 ** 20;
/** A file of more is refused, whoever reads it [bytes] */
const MOST_BYTES = 2 ** 31 - 1;
/** So many bytes are still near the processor when they are looked at. */
const PIECE_BYTES = 2 ** 20;

/** What is known of a large recording, and a second thread for what follows. */
export interface LargeFile {
  readonly source: Source;
  /** undefined where the second thread would need copies of the samples */
  readonly beside: Beside | undefined;
  readonly close: () => Promise<void>;
}

/**
 * A recording that is large enough to be worth a second thread; undefined for any other and for what is no file. The second thread
 * hashes what this one has read, then each takes half of the rows. What is not plain numbers is left to be read in one piece.
 *
 * @param leastBytes - from where on a file is large
 */
export async function readLargeFile(path: string, leastBytes = LARGE_BYTES): Promise<LargeFile | undefined> {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() !== true || found.size < leastBytes || found.size > MOST_BYTES) return undefined;
  const file = openSync(path, 'r');
  let thread: SecondThread | undefined;
  try {
    const padded = new Uint8Array(new SharedArrayBuffer(fstatSync(file).size + 1));
    thread = new SecondThread(padded);
    const { size, holdsNul } = readPieces(file, padded, thread);
    const halved = holdsNul ? undefined : halveTable(padded.subarray(0, size + 1), sharedColumn);
    return { ...(await readHalves(padded.subarray(0, size), halved, thread)), close: thread.close };
  } catch (error) {
    await thread?.close();
    throw error;
  } finally {
    closeSync(file);
  }
}

/** Reads a file piece by piece, each of which the second thread hashes. */
function readPieces(
  file: number,
  into: Uint8Array,
  thread: SecondThread,
): { readonly size: number; readonly holdsNul: boolean } {
  let size = 0;
  let holdsNul = false;
  for (let got = -1; got !== 0; size += got) {
    got = readSync(file, into, size, Math.min(PIECE_BYTES, into.length - 1 - size), null);
    if (got > 0) thread.hash(size, size + got);
    holdsNul ||= Buffer.from(into.buffer, into.byteOffset + size, got).includes(0);
  }
  return { size, holdsNul };
}

/** The rows of both halves as one recording, or the bytes where they are no plain table. */
async function readHalves(
  bytes: Uint8Array,
  halved: HalvedTable | undefined,
  thread: SecondThread,
): Promise<Pick<LargeFile, 'source' | 'beside'>> {
  const second = thread.finish(halved?.halves[1]);
  const firstCount = halved && readHalf(halved.halves[0]);
  const answer = await second;
  const hash = answer?.sha256 ?? sha256(bytes);
  if (halved !== undefined && firstCount !== undefined && answer?.rowCount !== undefined) {
    const of = { sha256: hash, byteLength: bytes.length };
    const recording = joinedRecording(halved, [firstCount, answer.rowCount], of);
    if (recording !== undefined) return { source: recording, beside: thread.beside };
  }
  return { source: hashedAs(bytes, hash), beside: undefined };
}

function sharedColumn(rows: number): Float64Array {
  return new Float64Array(new SharedArrayBuffer(rows * Float64Array.BYTES_PER_ELEMENT));
}
