import { simulateSet } from '@surae/simulation';
import Papa from 'papaparse';
import { main } from '../../apps/cli/src/main.ts';
import { traceCsv } from '../../apps/cli/src/trace-csv.ts';
import { MemoryIo } from './memory-io.ts';
import { seatedTrace } from './tested-pull.ts';

/** Cells of a row by column; what is left out is empty. */
export type Cells = Readonly<Record<string, string | number>>;

/** Recordings by their number of repetitions, each made once. */
const made = new Map<number, string>();

/**
 * A recording of a heel with so many repetitions, every one of them plain: a clean simulated person on a beat of two seconds
 * who loses a seventh of the height on the way, so that the set shows signs of fatigue and every repetition is high enough.
 */
export function heelRecording(count: number): string {
  const kept = made.get(count);
  if (kept !== undefined) return kept;
  const { trace } = simulateSet({
    placement: 'heel',
    level: 'clean',
    seed: 1,
    count,
    cycleS: 2,
    faults: { fatigueLoss: 0.15 },
    person: { topPitchRad: 0.62, shares: [0.4, 0.1, 0.4, 0.1] },
  });
  const text = traceCsv(trace, []);
  made.set(count, text);
  return text;
}

/** Everything that is told of a leg where nothing stands against comparing it. */
export const WHOLE_ROW: Cells = {
  placement: 'heel',
  test: 'heel-raise',
  protocol: 'single-leg.incline10',
  date: '2026-03-01',
  source: 'person',
  end_reason: 'fatigue',
  exertion: 9,
  pain_before: 0,
  pain_peak: 0,
  pain_sharp: 'no',
  footwear: 'barefoot',
  symptomatic: 'none',
  earlier_injury: 'no',
  tests_before: 2,
  flare: 'no',
  sex: 'women',
  age_years: 38,
  height_cm: 168,
  body_mass_kg: 62,
  pregnant: 'no',
  amputation: 'no',
  nerve_condition: 'no',
  nerve_signs: 'no',
  one_sided_sport: 'no',
  leg_length_raise: 'no',
};

/** A manifest of these rows in memory; a recording is made for each number of repetitions that a file name holds. */
export function rowsInMemory(rows: readonly Cells[], files: Readonly<Record<string, string>> = {}): MemoryIo {
  const memory = new MemoryIo();
  memory.width = 100;
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cells = rows.map((row) => columns.map((column) => String(row[column] ?? '')));
  memory.files.set('m.csv', Papa.unparse([columns, ...cells], { newline: '\r\n' }));
  for (const { file } of rows) {
    const count = /(\d+)\.csv$/.exec(String(file))?.[1];
    if (count !== undefined) memory.files.set(String(file), heelRecording(Number(count)));
  }
  for (const [name, text] of Object.entries(files)) memory.files.set(name, text);
  return memory;
}

/** The command run over a manifest of these rows; a recording is made for each number of repetitions that a file name holds. */
export async function assessRows(
  rows: readonly Cells[],
  options: readonly string[] = [],
  files: Readonly<Record<string, string>> = {},
): Promise<{ memory: MemoryIo; code: number }> {
  const memory = rowsInMemory(rows, files);
  const code = await main(['assess', '--manifest', 'm.csv', ...options], memory.io);
  return { memory, code };
}

/** A recording of three seated efforts, the best of them with this net force, over what rests on the sensor. */
export function pullRecording(netN: number, restN: number): string {
  const [group] = seatedTrace(netN, restN).groups;
  const { samples } = group.channels[0];
  const rows = Array.from(group.timesS, (timeS, i) => `${timeS.toFixed(4)},${samples[i].toFixed(2)}`);
  return `time [s],force [N]\n${rows.join('\n')}\n`;
}
