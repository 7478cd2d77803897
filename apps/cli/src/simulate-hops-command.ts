import { HOP_PROTOCOLS } from '@surae/shared';
import { type SimulatedHops, simulateHops } from '@surae/simulation';
import type { Io } from './io.ts';
import type { SimulateHops } from './simulate-arguments.ts';
import { type SimulatedRecording, writeSimulated } from './simulated-folder.ts';

const TRUTH_COLUMNS = [
  'index',
  'land_s',
  'take_off_s',
  'lands_again_s',
  'contact_ms',
  'flight_ms',
  'stiffness_n_per_m',
] as const;

const MANIFEST_COLUMNS = ['person', 'visit', 'side', 'test', 'placement', 'body_mass_kg', 'protocol'] as const;

/** Writes recordings of repeated hops with known truth, and the manifest by which they can be assessed. */
export function simulateHopsCommand(args: SimulateHops, io: Io): number {
  const { placement, gyroscope, level, rateHz } = args;
  const sensor = gyroscope ? placement : `${placement}-no-gyroscope`;
  writeSimulated(
    args,
    {
      nameOf: (seed) => `hops-${sensor}-${level}-${rateHz}hz-${seed}`,
      recordingOf: (seed): SimulatedRecording => {
        const hops = simulateHops({ placement, level, seed, sampleRateHz: rateHz, gyroscope });
        const { trace, truth, faults } = hops;
        return {
          trace,
          made: `hop-series, ${sensor}, level ${level}, ${rateHz} Hz`,
          known: { truth, faults },
          manifestRow: ['', '', '', 'hop-series', placement, truth.massKg.toFixed(1), HOP_PROTOCOLS[0]!.id],
          truthRows: truthRows(hops),
        };
      },
      manifestColumns: MANIFEST_COLUMNS,
      truthColumns: TRUTH_COLUMNS,
      trueThings: 'hops',
    },
    io,
  );
  return 0;
}

/** An empty cell is a contact that no hop has: it starts from standing or from a stop on the ground. */
function truthRows({ truth }: SimulatedHops): string[][] {
  const orEmpty = (value: number | null, digits: number): string => (value === null ? '' : value.toFixed(digits));
  const inMs = (valueS: number | null): string => orEmpty(valueS === null ? null : valueS * 1000, 2);
  return truth.hops.map((hop, index) => [
    `${index + 1}`,
    orEmpty(hop.landS, 4),
    orEmpty(hop.takeOffS, 4),
    orEmpty(hop.landsAgainS, 4),
    inMs(hop.contactS),
    inMs(hop.flightS),
    orEmpty(hop.stiffnessNpm, 0),
  ]);
}
