import type { Recording } from '@surae/records';
import type { Dice } from './messy-channels.ts';
import { encoded, type MessyTruth } from './messy-table.ts';

/** A small table with what its numbers are, written as it is asked for. */
export interface MadeTable {
  readonly names: readonly string[];
  /** decimals of each column */
  readonly decimals: readonly number[];
  /** numbers row by row, NaN where a value is missing; the first column holds times [s], the others mm and N */
  readonly rows: readonly (readonly number[])[];
  readonly delimiter: MessyTruth['delimiter'];
  readonly decimal: '.' | ',';
  readonly encoding: MessyTruth['encoding'];
  readonly mark: boolean;
  readonly eol: string;
  /** a row behind which the header stands again; -1 without */
  readonly repeatAt: number;
}

export function drawnTable({ draw, pick }: Dice): MadeTable {
  const count = 30 + Math.floor(20 * draw());
  const decimal = pick(['.', ','] as const);
  return {
    names: ['Zeit [s]', 'Fersenhöhe [mm]', 'Kraft links [N]'],
    decimals: [2, 2, 1],
    rows: Array.from({ length: count }, (_, i) => {
      const swing = 1 - Math.cos((2 * Math.PI * i) / 17);
      return [i / 50, Number((40 * swing + draw()).toFixed(2)), Number((650 + 40 * swing + 5 * draw()).toFixed(1))];
    }),
    delimiter: decimal === ',' ? pick([';', '\t', '|'] as const) : pick([',', ';', '\t', '|'] as const),
    decimal,
    encoding: pick(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const),
    mark: draw() < 0.5,
    eol: pick(['\n', '\r\n', '\r']),
    repeatAt: -1,
  };
}

function cellOf(value: number, decimals: number, decimal: string): string {
  return Number.isNaN(value) ? 'NaN' : value.toFixed(decimals).replace('.', decimal);
}

/** The lines of a table: its header and its rows. */
export function linesOf({ names, decimals, rows, delimiter, decimal, repeatAt }: MadeTable): string[] {
  const header = names.join(delimiter);
  const body = rows.map((row) => row.map((value, i) => cellOf(value, decimals[i], decimal)).join(delimiter));
  return [header, ...body.flatMap((line, i) => (i === repeatAt ? [line, header] : [line]))];
}

export function bytesOfLines(lines: readonly string[], { encoding, mark, eol }: MadeTable): Uint8Array {
  return encoded(lines.map((line) => line + eol).join(''), encoding, mark);
}

export function bytesOf(table: MadeTable): Uint8Array {
  return bytesOfLines(linesOf(table), table);
}

/** Times and values of each channel by the name of its column, as a slow reader has them from the rows [SI]. */
export function meant(table: MadeTable): Record<string, [number, number][]> {
  return Object.fromEntries(
    table.names.slice(1).map((name, i) => [
      name,
      table.rows.flatMap((row): [number, number][] => {
        const value = row[i + 1];
        return Number.isNaN(value) ? [] : [[row[0], name.includes('[mm]') ? value / 1000 : value]];
      }),
    ]),
  );
}

/** The same of a recording. */
export function read({ groups }: Recording): Record<string, [number, number][]> {
  return Object.fromEntries(
    groups.flatMap(({ timesS, channels }) =>
      channels.map(
        ({ column, samples }) =>
          [column, [...samples].map((value, i): [number, number] => [timesS[i], value])] as const,
      ),
    ),
  );
}
