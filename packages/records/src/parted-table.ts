import { readLines, wantedColumns } from './byte-reader.ts';
import { RecordError } from './errors.ts';
import { type Mapping, mapHeader } from './mapping.ts';
import { NumberColumns } from './number-columns.ts';
import { type ReadOptions, tableRecording, wantedOf } from './read-recording.ts';
import type { Recording } from './recording.ts';
import { RowLines } from './row-lines.ts';
import { layoutOf } from './table.ts';
import { readTableHeader, type TableHeader } from './table-header.ts';
import type { RowLayout } from './table-row.ts';
import { countLineEnds } from './text.ts';

/**
 * Puts the bytes of a file into a place, as many as fit in there or are left from `at` on, and gives how many they are: none where
 * there are no more, or where they are no text.
 */
export type ReadBytes = (into: Uint8Array, at: number) => number;

/** What one of two readers has to read, and room for its numbers: plain data that threads can share. */
export interface TablePart {
  /** the first byte of its first line in the file */
  readonly from: number;
  /** the byte after its last line */
  readonly to: number;
  /** whether its last line has no line end */
  readonly endsOpen: boolean;
  readonly layout: RowLayout;
  /** one for each wanted column, with room for the rows of this part */
  readonly columns: readonly Float64Array[];
}

/** A table whose rows two readers read at once. */
export interface PartedTable {
  readonly header: TableHeader;
  readonly mapping: Mapping;
  readonly parts: readonly [TablePart, TablePart];
  /** both parts of each column, one after the other */
  readonly columns: readonly Float64Array[];
}

/** Which share of the rows is of the first part where the reader of the second hashes all of the file besides: ours; both ended within 0.03 s of 1.6. */
const FIRST_SHARE = 2 / 3;

/** A header is looked for in so many first bytes: notes above it are short. */
const HEADER_BYTES = 1 << 20;

/** So many bytes at a time are read, which stay near the processor. */
const PIECE_BYTES = 1 << 20;

/** How long lines are is found out in so many bytes at so many places: ours. */
const LOOKED_AT = { bytes: 1 << 13, places: 32 };

/** Room for a tenth more rows than was found there, ours: room that is never written to takes no memory, but rows move over it. */
const ROOM = 1.1;

const LF = 10;
const CR = 13;

/** There are more rows than lines were looked at let expect. */
class NoRoom extends Error {}

/** Columns that somebody else made and that do not grow. */
class GivenColumns extends NumberColumns {
  constructor(columns: readonly Float64Array[]) {
    super(0, 0);
    this.columns.push(...columns);
    this.capacity = columns[0]?.length ?? 0;
  }

  override grow(): never {
    throw new NoRoom();
  }
}

/**
 * A table of numbers under our documented header, divided behind a line end. Only what is plain is divided: whatever is not gives
 * undefined, here and in {@link readPart} and {@link joinedRecording}, and is read in one piece, which then says what is wrong and where.
 *
 * @param size - of the file [bytes]
 * @param newColumn - gives room for so many numbers, all zero
 */
export function partTable(
  size: number,
  read: ReadBytes,
  newColumn: (rows: number) => Float64Array,
): PartedTable | undefined {
  const bytesOf = (from: number, to: number): Uint8Array => {
    const bytes = new Uint8Array(Math.min(to, size) - from);
    return bytes.subarray(0, read(bytes, from));
  };
  return orUndefined(() => {
    const head = bytesOf(0, HEADER_BYTES);
    const headEnd = head.lastIndexOf(LF) + 1;
    const header = readTableHeader(head.subarray(0, headEnd));
    const from = header.dataStart + headEnd - header.bytes.length;
    const near = from + Math.floor(FIRST_SHARE * (size - from));
    const middle = near + bytesOf(near, near + PIECE_BYTES).indexOf(LF) + 1;
    const last = bytesOf(size - 1, size)[0];
    if (middle === near || middle >= size || last === undefined) return undefined;
    const mapping = mapHeader(header.names);
    const layout = layoutOf(header, wantedOf(mapping));
    const room = roomFor(bytesOf, from, middle);
    const rows = room + roomFor(bytesOf, middle, size);
    const columns = Array.from({ length: wantedColumns(layout) }, () => newColumn(rows));
    const parts = [
      { from, to: middle, endsOpen: false, layout, columns: columns.map((column) => column.subarray(0, room)) },
      {
        from: middle,
        to: size,
        endsOpen: last !== LF && last !== CR,
        layout,
        columns: columns.map((column) => column.subarray(room)),
      },
    ] as const;
    return { header, mapping, parts, columns };
  });
}

/** Room for the rows between two places: by all lines of a short way, by some all along a long one. */
function roomFor(bytesOf: (from: number, to: number) => Uint8Array, from: number, to: number): number {
  const step = Math.max(LOOKED_AT.bytes, (to - from) / LOOKED_AT.places);
  let looked = 0;
  let ends = 0;
  for (let at = from; at < to; at += step) {
    const bytes = bytesOf(Math.floor(at), Math.min(to, Math.floor(at) + LOOKED_AT.bytes));
    looked += bytes.length;
    ends += countLineEnds(bytes, bytes.length);
  }
  return Math.ceil((ROOM * (ends + 1) * (to - from)) / Math.max(1, looked));
}

/** Reads the rows of a part into its columns, and gives how many they are; undefined where one of them is not plain numbers. */
export function readPart({ from, to, endsOpen, layout, columns }: TablePart, read: ReadBytes): number | undefined {
  return orUndefined(() => {
    // one byte more for the line end that the file has not
    const room = new Uint8Array(PIECE_BYTES + 1);
    let rowCount = 0;
    let kept = 0;
    for (let at = from; at < to; ) {
      const got = read(room.subarray(kept, Math.min(PIECE_BYTES, kept + to - at)), at);
      // the file is shorter than it was, or a line longer than the room
      if (got === 0) return undefined;
      at += got;
      let filled = kept + got;
      const opens = endsOpen && at === to;
      if (opens) room[filled++] = LF;
      const end = at === to ? filled : room.lastIndexOf(LF, filled - 1) + 1;
      const store = new GivenColumns(columns.map((column) => column.subarray(rowCount)));
      const more = readLines({ bytes: room, from: 0, to: end, endsOpen: opens }, 1, layout, store, new RowLines());
      if (more === undefined) return undefined;
      rowCount += more;
      room.copyWithin(0, end, filled);
      kept = filled - end;
    }
    return rowCount;
  });
}

/**
 * The recording of a table of which both parts are read. The second part is moved to the end of the first, where it stands in memory.
 *
 * @param rowCounts - what {@link readPart} gave for each part
 */
export function joinedRecording(
  { header, mapping, parts, columns }: PartedTable,
  rowCounts: readonly [number, number],
  source: Recording['source'],
  options: ReadOptions = {},
): Recording | undefined {
  const [first, second] = rowCounts;
  const room = parts[0].columns[0]!.length;
  if (first + second === 0) return undefined;
  const whole = columns.map((column) => column.copyWithin(first, room, room + second).subarray(0, first + second));
  const { targets } = parts[0].layout;
  const table = {
    ...header,
    columns: targets.map((target) => (target < 0 ? undefined : whole[target])),
    // only a refusal names a line, and what is refused is read again in one piece
    lineOf: (row: number) => row,
  };
  return orUndefined(() => tableRecording(table, mapping, source, options));
}

/** What was made; undefined where the table was refused or is longer than was expected. */
function orUndefined<Made>(make: () => Made): Made | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof RecordError || error instanceof NoRoom) return undefined;
    throw error;
  }
}
