import { join } from 'node:path';
import { PULL_PROTOCOLS } from '@surae/shared';
import { type SimulatedPulls, simulatePulls } from '@surae/simulation';
import { csvText } from './csv-text.ts';
import type { Io } from './io.ts';
import type { SimulatePulls } from './simulate-arguments.ts';
import { softwareName } from './software.ts';
import { traceCsv } from './trace-csv.ts';
import { WriteFolder } from './write-folder.ts';

const TRUTH_COLUMNS = [
  'file',
  'index',
  'kind',
  'onset_s',
  'end_s',
  'peak_at_s',
  'peak_n',
  'mean_500ms_n',
  'rfd_0_50_n_per_s',
  'rfd_0_100_n_per_s',
  'rfd_0_150_n_per_s',
  'rfd_0_200_n_per_s',
  'impulse_0_200_n_s',
  'time_to_30_percent_s',
  'time_to_50_percent_s',
  'rest_n',
] as const;

const MANIFEST_COLUMNS = ['file', 'person', 'visit', 'side', 'test', 'placement', 'protocol'] as const;

/** What a resting leg weighs on a plate under the forefoot; a cell in line does not read it. Ours. */
const LEG_N = 85;

/** Writes recordings of isometric efforts with known truth, and the manifest by which they can be assessed. */
export function simulatePullsCommand(args: SimulatePulls, io: Io): number {
  const { placement, kind, level, rateHz } = args;
  const seeds = Array.from({ length: args.count }, (_, index) => args.seed + index);
  const nameOf = (seed: number): string => `isometric-${placement}-${kind}-${level}-${rateHz}hz-${seed}`;
  const names = seeds.flatMap((seed) => [`${nameOf(seed)}.csv`, `${nameOf(seed)}.truth.json`]);
  const folder = new WriteFolder(args.folder, [...names, 'truth.csv', 'manifest.csv'], args.replace, io);
  const protocol = PULL_PROTOCOLS.find(({ parameters }) => parameters.effort.value === kind)!.id;
  const manifest: string[][] = [];
  const truth: string[][] = [];
  for (const seed of seeds) {
    const name = nameOf(seed);
    const faults = { restLoadN: placement === 'platform' ? LEG_N : 0 };
    const pulls = simulatePulls({ kind, level, seed, sampleRateHz: rateHz, faults });
    const note = `simulated by ${softwareName()}: isometric, ${placement}, ${kind}, level ${level}, ${rateHz} Hz, seed ${seed}`;
    folder.write(`${name}.csv`, traceCsv(pulls.trace, [note]));
    const known = { software: softwareName(), truth: pulls.truth, faults: pulls.faults };
    folder.write(`${name}.truth.json`, `${JSON.stringify(known, null, 2)}\n`);
    manifest.push([`${name}.csv`, '', '', '', 'isometric', placement, protocol]);
    truth.push(...truthRows(name, pulls));
  }
  folder.write('truth.csv', csvText(TRUTH_COLUMNS, truth));
  folder.write('manifest.csv', csvText(MANIFEST_COLUMNS, manifest));
  const recordings = args.count === 1 ? 'recording' : 'recordings';
  io.writeOut(`${args.count} simulated ${recordings} in ${args.folder}, ${truth.length} true efforts\n`);
  io.writeOut(`assess with: surae assess --manifest ${join(args.folder, 'manifest.csv')}\n`);
  return 0;
}

function truthRows(name: string, { truth }: SimulatedPulls): string[][] {
  return truth.efforts.map((effort, index) => [
    `${name}.csv`,
    `${index + 1}`,
    effort.kind,
    effort.onsetS.toFixed(4),
    effort.endS.toFixed(4),
    effort.peakS.toFixed(4),
    effort.peakN.toFixed(2),
    effort.bestHalfSecondN.toFixed(2),
    ...effort.risenN.map((risen, k) => (risen / (0.05 * (k + 1))).toFixed(1)),
    effort.earlyImpulseNs.toFixed(3),
    ...effort.reachedS.map((timeS) => timeS.toFixed(4)),
    truth.restLoadN.toFixed(2),
  ]);
}
