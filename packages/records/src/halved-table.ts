import { type LineSpan, readLines, wantedColumns } from './byte-reader.ts';
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

/** What one of two readers has to read, and room for its numbers: plain data that threads can share. */
export interface TableHalf {
  readonly span: LineSpan;
  readonly layout: RowLayout;
  /** one for each wanted column, with room for the rows of this half */
  readonly columns: readonly Float64Array[];
}

/** A table whose rows two readers read at once. */
export interface HalvedTable {
  readonly header: TableHeader;
  readonly mapping: Mapping;
  readonly halves: readonly [TableHalf, TableHalf];
  /** both halves of each column, one after the other */
  readonly columns: readonly Float64Array[];
}

/** A header is looked for in so many first bytes: notes above it are short. */
const HEADER_BYTES = 1 << 20;

/** How long lines are is found out in so many bytes. */
const LOOKED_AT_BYTES = 1 << 16;

const LF = 10;
const CR = 13;

/** There are more rows than the first one made expect. */
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
 * A table of numbers under our documented header, divided behind a line end in its middle. Only what is plain is divided: whatever
 * is not gives undefined, here and in {@link readHalf} and {@link joinedRecording}, and is read in one piece, which then says what is wrong and where.
 *
 * @param padded - bytes of a file without a NUL, and one byte more, which becomes a line end where the file has none
 * @param newColumn - gives room for so many numbers, all zero
 */
export function halveTable(padded: Uint8Array, newColumn: (rows: number) => Float64Array): HalvedTable | undefined {
  const head = padded.slice(0, Math.min(HEADER_BYTES, padded.length - 1));
  const headEnd = head.lastIndexOf(LF) + 1;
  return orUndefined(() => {
    const header = readTableHeader(head.subarray(0, headEnd));
    const dataStart = header.dataStart + headEnd - header.bytes.length;
    const size = padded.length - 1;
    const last = padded[size - 1];
    const endsOpen = last !== LF && last !== CR;
    if (endsOpen) padded[size] = LF;
    const middle = padded.indexOf(LF, dataStart + ((size - dataStart) >> 1)) + 1;
    const to = endsOpen ? size + 1 : size;
    if (middle === 0 || middle >= to) return undefined;
    const spans = [
      { bytes: padded, from: dataStart, to: middle, endsOpen: false },
      { bytes: padded, from: middle, to, endsOpen },
    ] as const;
    const mapping = mapHeader(header.names);
    const layout = layoutOf(header, wantedOf(mapping));
    const room = roomFor(spans[0]);
    const rows = room + roomFor(spans[1]);
    const columns = Array.from({ length: wantedColumns(layout) }, () => newColumn(rows));
    const halves = [
      { span: spans[0], layout, columns: columns.map((column) => column.subarray(0, room)) },
      { span: spans[1], layout, columns: columns.map((column) => column.subarray(room)) },
    ] as const;
    return { header, mapping, halves, columns };
  });
}

/** Half as many rows again as the first lines make expect: room that is never written to takes no memory. */
function roomFor({ bytes, from, to }: LineSpan): number {
  const looked = bytes.subarray(from, Math.min(to, from + LOOKED_AT_BYTES));
  return Math.ceil((1.5 * (countLineEnds(looked, looked.length) + 1) * (to - from)) / looked.length);
}

/** Reads the rows of a half into its columns, and gives how many they are; undefined where one of them is not plain numbers. */
export function readHalf({ span, layout, columns }: TableHalf): number | undefined {
  return orUndefined(() => readLines(span, 1, layout, new GivenColumns(columns), new RowLines()));
}

/**
 * The recording of a table of which both halves are read. The second half is moved to the end of the first, where it stands in memory.
 *
 * @param rowCounts - what {@link readHalf} gave for each half
 */
export function joinedRecording(
  { header, mapping, halves, columns }: HalvedTable,
  rowCounts: readonly [number, number],
  source: Recording['source'],
  options: ReadOptions = {},
): Recording | undefined {
  const [first, second] = rowCounts;
  const room = halves[0].columns[0]!.length;
  if (first + second === 0) return undefined;
  const whole = columns.map((column) => column.copyWithin(first, room, room + second).subarray(0, first + second));
  const { targets } = halves[0].layout;
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
