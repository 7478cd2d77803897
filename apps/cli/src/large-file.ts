import { closeSync, fstatSync, openSync, statSync } from 'node:fs';
import type { Beside } from '@surae/analysis';
import { joinedRecording, partTable, type Recording, readPart, type TablePart } from '@surae/records';
import { FileBytes } from './file-bytes.ts';
import { SecondThread } from './second-thread.ts';

/** From here on a second thread is worth its start: ours; for a foot, two threads took as long as one at 32 MB and a sixth less at 64 MB. */
const LARGE_BYTES = 48 * 2 ** 20;
/** A file of more is refused, whoever reads it [bytes] */
const MOST_BYTES = 2 ** 31 - 1;

/** A large recording, and a second thread for what follows. */
export interface LargeFile {
  readonly source: Recording;
  readonly beside: Beside;
  readonly close: () => Promise<void>;
}

/**
 * A recording that is large enough to be worth a second thread; undefined for any other, for what is no file, and for what is not
 * plain numbers: those are read in one piece. Each thread reads its part of the rows through a small room, so that nobody holds the
 * file; the second one hashes all of it besides.
 *
 * @param leastBytes - from where on a file is large
 */
export async function readLargeFile(path: string, leastBytes = LARGE_BYTES): Promise<LargeFile | undefined> {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() !== true || found.size < leastBytes || found.size > MOST_BYTES) return undefined;
  const file = openSync(path, 'r');
  const thread = new SecondThread();
  let source: Recording | undefined;
  try {
    source = await readParts(file, thread);
  } finally {
    if (source === undefined) await thread.close();
    closeSync(file);
  }
  return source && { source, beside: thread.beside, close: thread.close };
}

/**
 * The recording in an open file, of which another reader takes the last rows.
 *
 * @returns undefined where it is not plain numbers, where it changed meanwhile, and where the other reader has ended
 */
export async function readParts(file: number, other: Pick<SecondThread, 'readLast'>): Promise<Recording | undefined> {
  const bytes = new FileBytes(file);
  const byteLength = fstatSync(file).size;
  const table = partTable(byteLength, bytes.look, sharedColumn);
  if (table === undefined) return undefined;
  const answer = other.readLast(file, table.parts[1]);
  const first = firstPart(bytes, table.parts[0]);
  const second = await answer;
  // each has read the first part for itself: had it changed meanwhile, the hash would be of another one
  if (first === undefined || second?.rowCount === undefined || first.checkSum !== second.checkSum) return undefined;
  return joinedRecording(table, [first.rowCount, second.rowCount], { sha256: second.sha256, byteLength });
}

function firstPart(
  bytes: FileBytes,
  part: TablePart,
): { readonly rowCount: number; readonly checkSum: number } | undefined {
  const rowCount = bytes.pass(0, part.from) ? readPart(part, bytes.next) : undefined;
  return rowCount === undefined ? undefined : { rowCount, checkSum: bytes.checkSum };
}

function sharedColumn(rows: number): Float64Array {
  return new Float64Array(new SharedArrayBuffer(rows * Float64Array.BYTES_PER_ELEMENT));
}
