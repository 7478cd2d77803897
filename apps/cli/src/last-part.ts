import { createHash } from 'node:crypto';
import { readPart, type TablePart } from '@surae/records';
import { FileBytes } from './file-bytes.ts';

/** What came of a file whose last rows were read. */
export interface LastPart {
  /** of all of the file */
  readonly sha256: string;
  /** CRC-32 of what stands before these rows */
  readonly checkSum: number;
  /** how many they are; undefined where they are not plain numbers */
  readonly rowCount: number | undefined;
}

/** Hashes an open file from its first byte on, and reads the rows of its last part on the way. */
export function readLastPart(file: number, part: TablePart): LastPart {
  const hash = createHash('sha256');
  const bytes = new FileBytes(file, (next) => void hash.update(next));
  const isThere = bytes.pass(0, part.from);
  const { checkSum } = bytes;
  const rowCount = isThere ? readPart(part, bytes.next) : undefined;
  return { sha256: hash.digest('hex'), checkSum, rowCount };
}
