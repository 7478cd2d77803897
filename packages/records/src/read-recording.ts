import { sha256Hex } from './hash.ts';
import { type HeaderPlace, type Mapping, mapHeader } from './mapping.ts';
import { refuseOverflow } from './overflow.ts';
import { type Placement, type Side, siUnits } from './quantities.ts';
import { freezeRecording, type RecordedChannel, type Recording } from './recording.ts';
import { readTableRows, type Table } from './table.ts';
import { readTableHeader } from './table-header.ts';
import { columnLabel } from './table-row.ts';
import { gapsIn } from './timeline.ts';
import { applyScale, type Scale } from './units.ts';

/** What is known about a file beside its bytes. */
export interface ReadOptions {
  /** name of the file, for refusals only */
  readonly file?: string;
  /** anatomical side of every channel, where the mapping names none */
  readonly side?: Side;
  /** declared placement of every channel, where the mapping names none */
  readonly placement?: Placement;
  /** which column is what; our documented header when left out */
  readonly mapping?: (names: readonly string[], place: HeaderPlace) => Mapping;
  /** SHA-256 of the bytes where the caller has it already, in lower-case hexadecimal */
  readonly sha256?: string;
  /** keep a copy of the bytes in the recording, so that it can be read again under another mapping */
  readonly keepBytes?: boolean;
}

/**
 * The recording that a table file holds: columns found by the mapping, in SI, on their own times.
 *
 * @throws {@link RecordError} with file, row and column; nothing is skipped, repaired or filled in
 */
export function readRecording(bytes: Uint8Array, options: ReadOptions = {}): Recording {
  const file = options.file;
  const header = readTableHeader(bytes, file);
  const headerPlace = file === undefined ? { row: header.line } : { file, row: header.line };
  const mapping = (options.mapping ?? mapHeader)(header.names, headerPlace);
  const table = readTableRows(header, wantedOf(mapping), file);
  const source = {
    sha256: options.sha256 ?? sha256Hex(bytes),
    byteLength: bytes.length,
    ...(options.keepBytes === true ? { bytes: new Uint8Array(bytes) } : {}),
  };
  return tableRecording(table, mapping, source, options);
}

/** Indices of the columns that a mapping makes use of. */
export function wantedOf(mapping: Mapping): number[] {
  return [mapping.time.columnIndex, ...mapping.samples.map(({ columnIndex }) => columnIndex)];
}

/**
 * The recording in a table that was read; its columns become those of the recording.
 *
 * @throws {@link RecordError} with file, row and column
 */
export function tableRecording(
  table: Pick<Table, 'columns' | 'names' | 'notes' | 'lineOf'>,
  mapping: Mapping,
  source: Recording['source'],
  { file, side: givenSide, placement: givenPlacement }: ReadOptions,
): Recording {
  const wanted = wantedOf(mapping);
  const isReadOnce = new Set(wanted).size === wanted.length;
  const inSi = (columnIndex: number, scale: Scale): Float64Array => {
    const column = table.columns[columnIndex]!;
    return applyScale(column, scale, isReadOnce ? column : undefined);
  };
  const timesS = inSi(mapping.time.columnIndex, mapping.time.unit.toSi);
  const gaps = gapsIn(timesS, mapping.samples, {
    ...(file === undefined ? {} : { file }),
    column: columnLabel(table.names, mapping.time.columnIndex),
    rowOf: (index) => table.lineOf(index),
  });
  const channels = mapping.samples.map((mapped): RecordedChannel => {
    const side = mapped.side ?? givenSide;
    const placement = mapped.placement ?? givenPlacement;
    const samples = inSi(mapped.columnIndex, mapped.unit.toSi);
    refuseOverflow(
      samples,
      mapped.quantity,
      (index) => table.lineOf(index),
      columnLabel(table.names, mapped.columnIndex),
      file,
    );
    return {
      quantity: mapped.quantity,
      axis: mapped.axis,
      samples,
      unit: { source: mapped.unit.ucum, si: siUnits[mapped.quantity] },
      column: columnLabel(table.names, mapped.columnIndex),
      ...(side === undefined ? {} : { side }),
      ...(placement === undefined ? {} : { placementDeclared: placement }),
    };
  });
  return freezeRecording({
    source,
    groups: [
      {
        timesS,
        timeUnit: { source: mapping.time.unit.ucum, si: siUnits.time },
        channels,
        gaps,
      },
    ],
    deviceNotes: table.notes,
    unusedColumns: mapping.ignored.map(({ column, reason }) => ({ column, reason })),
  });
}
