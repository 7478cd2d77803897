import { type SimulatedSet, simulateSet } from '@surae/simulation';
import type { Io } from './io.ts';
import type { SimulateArguments, SimulateRaises } from './simulate-arguments.ts';
import { simulateHopsCommand } from './simulate-hops-command.ts';
import { simulateMessy } from './simulate-messy-command.ts';
import { simulatePullsCommand } from './simulate-pulls-command.ts';
import { type SimulatedRecording, writeSimulated } from './simulated-folder.ts';

const TRUTH_COLUMNS = [
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
    case 'messy':
      return simulateMessy(args, io);
  }
}

function simulateRaises(args: SimulateRaises, io: Io): number {
  const { placement, gyroscope, level } = args;
  writeSimulated(
    args,
    {
      nameOf: (seed) => `${placement}${gyroscope ? '' : '-no-gyroscope'}-${level}-${seed}`,
      recordingOf: (seed): SimulatedRecording => {
        const set = simulateSet({ placement, level, seed, gyroscope });
        const { trace, subject, truth, faults } = set;
        return {
          trace,
          made: `placement ${placement}, level ${level}`,
          known: { subject, truth, faults },
          manifestRow: manifestRow(placement, set),
          truthRows: truthRows(set),
        };
      },
      manifestColumns: MANIFEST_COLUMNS,
      truthColumns: TRUTH_COLUMNS,
      trueThings: 'repetitions',
    },
    io,
  );
  return 0;
}

function manifestRow(placement: string, { subject }: SimulatedSet): string[] {
  const { heelLeverM, bodyMassKg, stringRestLengthM } = subject;
  const string = stringRestLengthM === undefined ? '' : (stringRestLengthM * 1000).toFixed(1);
  return ['', '', '', 'heel-raise', placement, (heelLeverM * 1000).toFixed(1), bodyMassKg.toFixed(1), string];
}

function truthRows(set: SimulatedSet): string[][] {
  const millimetres = (valueM: number): string => (valueM * 1000).toFixed(2);
  return set.truth.repetitions.map((repetition, index) => [
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
