import { join } from 'node:path';
import { csvText } from '@surae/exchange';
import type { SimulatedTrace } from '@surae/simulation';
import type { Io } from './io.ts';
import type { SimulateRaises } from './simulate-arguments.ts';
import { softwareName } from './software.ts';
import { traceCsv } from './trace-csv.ts';
import { WriteFolder } from './write-folder.ts';

/** Where simulated recordings go, and which seeds make them. */
type SimulatedPlace = Pick<SimulateRaises, 'folder' | 'replace' | 'seed' | 'count'>;

/** One simulated recording with what is known of it. */
export interface SimulatedRecording {
  readonly trace: SimulatedTrace;
  /** how it was made, without the seed and what made it */
  readonly made: string;
  /** what went into it, as it stands in its own file */
  readonly known: object;
  /** its row of the manifest, and one of `truth.csv` for each true thing in it, both without the name of the file */
  readonly manifestRow: readonly string[];
  readonly truthRows: readonly (readonly string[])[];
}

/** Recordings of one kind: their names, their tables, and how one is made. */
export interface SimulatedKind {
  /** name of a recording without its ending */
  readonly nameOf: (seed: number) => string;
  readonly recordingOf: (seed: number) => SimulatedRecording;
  /** columns after the name of the file */
  readonly manifestColumns: readonly string[];
  readonly truthColumns: readonly string[];
  /** what a row of `truth.csv` is about, in the plural */
  readonly trueThings: string;
}

/**
 * Writes recordings with known truth: each with its own truth beside it, `truth.csv` of all, and the manifest by which they can
 * be assessed. Nothing is written where one of the files is there already and was not to be replaced.
 *
 * @throws {@link UsageError} when a file is there, or the folder cannot be written
 */
export function writeSimulated(place: SimulatedPlace, kind: SimulatedKind, io: Io): void {
  const { nameOf, recordingOf, manifestColumns, truthColumns, trueThings } = kind;
  const seeds = Array.from({ length: place.count }, (_, index) => place.seed + index);
  const names = seeds.flatMap((seed) => [`${nameOf(seed)}.csv`, `${nameOf(seed)}.truth.json`]);
  const folder = new WriteFolder(place.folder, [...names, 'truth.csv', 'manifest.csv'], place.replace, io);
  const manifest: string[][] = [];
  const truth: string[][] = [];
  for (const seed of seeds) {
    const file = `${nameOf(seed)}.csv`;
    const { trace, made, known, manifestRow, truthRows } = recordingOf(seed);
    folder.write(file, traceCsv(trace, [`simulated by ${softwareName()}: ${made}, seed ${seed}`]));
    const told = { software: softwareName(), ...known };
    folder.write(`${nameOf(seed)}.truth.json`, `${JSON.stringify(told, null, 2)}\n`);
    manifest.push([file, ...manifestRow]);
    truth.push(...truthRows.map((row) => [file, ...row]));
  }
  folder.write('truth.csv', csvText(['file', ...truthColumns], truth));
  folder.write('manifest.csv', csvText(['file', ...manifestColumns], manifest));
  const recordings = place.count === 1 ? 'recording' : 'recordings';
  io.writeOut(`${place.count} simulated ${recordings} in ${place.folder}, ${truth.length} true ${trueThings}\n`);
  io.writeOut(`assess with: surae assess --manifest ${join(place.folder, 'manifest.csv')}\n`);
}
