import { join } from 'node:path';
import { type SimulatedSet, simulateSet } from '@surae/simulation';
import { csvText } from './csv-text.ts';
import type { Io } from './io.ts';
import type { SimulateArguments, SimulateRaises } from './simulate-arguments.ts';
import { simulateHopsCommand } from './simulate-hops-command.ts';
import { simulatePullsCommand } from './simulate-pulls-command.ts';
import { softwareName } from './software.ts';
import { traceCsv } from './trace-csv.ts';
import { WriteFolder } from './write-folder.ts';

const TRUTH_COLUMNS = [
  'file',
  'index',
  'start_s',
  'top_s',
  'end_s',
  'heel_height_mm',
  'body_rise_mm',
  'high_from_s',
  'high_to_s',
  'low_before_mm',
  'low_after_mm',
  'knee_assist',
  'hand_push',
  'heel_impact',
] as const;

const MANIFEST_COLUMNS = [
  'file',
  'person',
  'visit',
  'side',
  'test',
  'placement',
  'heel_lever_mm',
  'body_mass_kg',
  'string_rest_length_mm',
] as const;

/** Writes recordings with known truth, and the manifest by which they can be assessed. */
export function simulateCommand(args: SimulateArguments, io: Io): number {
  switch (args.test) {
    case 'heel-raise':
      return simulateRaises(args, io);
    case 'isometric':
      return simulatePullsCommand(args, io);
    case 'hop-series':
      return simulateHopsCommand(args, io);
  }
}

function simulateRaises(args: SimulateRaises, io: Io): number {
  const seeds = Array.from({ length: args.count }, (_, index) => args.seed + index);
  const nameOf = (seed: number): string =>
    `${args.placement}${args.gyroscope ? '' : '-no-gyroscope'}-${args.level}-${seed}`;
  const names = seeds.flatMap((seed) => [`${nameOf(seed)}.csv`, `${nameOf(seed)}.truth.json`]);
  const folder = new WriteFolder(args.folder, [...names, 'truth.csv', 'manifest.csv'], args.replace, io);
  const manifest: string[][] = [];
  const truth: string[][] = [];
  for (const seed of seeds) {
    const name = nameOf(seed);
    const set = simulateSet({ placement: args.placement, level: args.level, seed, gyroscope: args.gyroscope });
    const note = `simulated by ${softwareName()}: placement ${args.placement}, level ${args.level}, seed ${seed}`;
    folder.write(`${name}.csv`, traceCsv(set.trace, [note]));
    folder.write(`${name}.truth.json`, `${JSON.stringify(truthOf(set), null, 2)}\n`);
    manifest.push(manifestRow(name, args.placement, set));
    truth.push(...truthRows(name, set));
  }
  folder.write('truth.csv', csvText(TRUTH_COLUMNS, truth));
  folder.write('manifest.csv', csvText(MANIFEST_COLUMNS, manifest));
  const recordings = args.count === 1 ? 'recording' : 'recordings';
  io.writeOut(`${args.count} simulated ${recordings} in ${args.folder}, ${truth.length} true repetitions\n`);
  io.writeOut(`assess with: surae assess --manifest ${join(args.folder, 'manifest.csv')}\n`);
  return 0;
}

function truthOf(set: SimulatedSet): unknown {
  return { software: softwareName(), subject: set.subject, truth: set.truth, faults: set.faults };
}

function manifestRow(name: string, placement: string, { subject }: SimulatedSet): string[] {
  const { heelLeverM, bodyMassKg, stringRestLengthM } = subject;
  const string = stringRestLengthM === undefined ? '' : (stringRestLengthM * 1000).toFixed(1);
  return [
    `${name}.csv`,
    '',
    '',
    '',
    'heel-raise',
    placement,
    (heelLeverM * 1000).toFixed(1),
    bodyMassKg.toFixed(1),
    string,
  ];
}

function truthRows(name: string, set: SimulatedSet): string[][] {
  const millimetres = (valueM: number): string => (valueM * 1000).toFixed(2);
  return set.truth.repetitions.map((repetition, index) => [
    `${name}.csv`,
    `${index + 1}`,
    repetition.startS.toFixed(4),
    repetition.topS.toFixed(4),
    repetition.endS.toFixed(4),
    millimetres(repetition.heelHeightM),
    millimetres(repetition.bodyRiseM),
    repetition.highFromS.toFixed(4),
    repetition.highToS.toFixed(4),
    millimetres(repetition.lowBeforeM),
    millimetres(repetition.lowAfterM),
    `${repetition.kneeAssist}`,
    `${repetition.handPush}`,
    `${repetition.heelImpact}`,
  ]);
}
