import { join } from 'node:path';
import { HOP_PROTOCOLS } from '@surae/shared';
import { type SimulatedHops, simulateHops } from '@surae/simulation';
import { csvText } from './csv-text.ts';
import type { Io } from './io.ts';
import type { SimulateHops } from './simulate-arguments.ts';
import { softwareName } from './software.ts';
import { traceCsv } from './trace-csv.ts';
import { WriteFolder } from './write-folder.ts';

const TRUTH_COLUMNS = [
  'file',
  'index',
  'land_s',
  'take_off_s',
  'lands_again_s',
  'contact_ms',
  'flight_ms',
  'stiffness_n_per_m',
] as const;

const MANIFEST_COLUMNS = ['file', 'person', 'visit', 'side', 'test', 'placement', 'body_mass_kg', 'protocol'] as const;

/** Writes recordings of repeated hops with known truth, and the manifest by which they can be assessed. */
export function simulateHopsCommand(args: SimulateHops, io: Io): number {
  const { placement, gyroscope, level, rateHz } = args;
  const seeds = Array.from({ length: args.count }, (_, index) => args.seed + index);
  const sensor = gyroscope ? placement : `${placement}-no-gyroscope`;
  const nameOf = (seed: number): string => `hops-${sensor}-${level}-${rateHz}hz-${seed}`;
  const names = seeds.flatMap((seed) => [`${nameOf(seed)}.csv`, `${nameOf(seed)}.truth.json`]);
  const folder = new WriteFolder(args.folder, [...names, 'truth.csv', 'manifest.csv'], args.replace, io);
  const manifest: string[][] = [];
  const truth: string[][] = [];
  for (const seed of seeds) {
    const name = nameOf(seed);
    const hops = simulateHops({ placement, level, seed, sampleRateHz: rateHz, gyroscope });
    const note = `simulated by ${softwareName()}: hop-series, ${sensor}, level ${level}, ${rateHz} Hz, seed ${seed}`;
    folder.write(`${name}.csv`, traceCsv(hops.trace, [note]));
    const known = { software: softwareName(), truth: hops.truth, faults: hops.faults };
    folder.write(`${name}.truth.json`, `${JSON.stringify(known, null, 2)}\n`);
    const mass = hops.truth.massKg.toFixed(1);
    manifest.push([`${name}.csv`, '', '', '', 'hop-series', placement, mass, HOP_PROTOCOLS[0]!.id]);
    truth.push(...truthRows(name, hops));
  }
  folder.write('truth.csv', csvText(TRUTH_COLUMNS, truth));
  folder.write('manifest.csv', csvText(MANIFEST_COLUMNS, manifest));
  const recordings = args.count === 1 ? 'recording' : 'recordings';
  io.writeOut(`${args.count} simulated ${recordings} in ${args.folder}, ${truth.length} true hops\n`);
  io.writeOut(`assess with: surae assess --manifest ${join(args.folder, 'manifest.csv')}\n`);
  return 0;
}

/** An empty cell is a contact that no hop has: it starts from standing or from a stop on the ground. */
function truthRows(name: string, { truth }: SimulatedHops): string[][] {
  const orEmpty = (value: number | null, digits: number): string => (value === null ? '' : value.toFixed(digits));
  const inMs = (valueS: number | null): string => orEmpty(valueS === null ? null : valueS * 1000, 2);
  return truth.hops.map((hop, index) => [
    `${name}.csv`,
    `${index + 1}`,
    orEmpty(hop.landS, 4),
    orEmpty(hop.takeOffS, 4),
    orEmpty(hop.landsAgainS, 4),
    inMs(hop.contactS),
    inMs(hop.flightS),
    orEmpty(hop.stiffnessNpm, 0),
  ]);
}
