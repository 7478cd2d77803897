import { PULL_PROTOCOLS } from '@surae/shared';
import { type SimulatedPulls, simulatePulls } from '@surae/simulation';
import type { Io } from './io.ts';
import type { SimulatePulls } from './simulate-arguments.ts';
import { type SimulatedRecording, writeSimulated } from './simulated-folder.ts';

const TRUTH_COLUMNS = [
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

const MANIFEST_COLUMNS = ['person', 'visit', 'side', 'test', 'placement', 'protocol'] as const;

/** What a resting leg weighs on a plate under the forefoot; a cell in line does not read it. Ours. */
const LEG_N = 85;

/** Writes recordings of isometric efforts with known truth, and the manifest by which they can be assessed. */
export function simulatePullsCommand(args: SimulatePulls, io: Io): number {
  const { placement, kind, level, rateHz } = args;
  const protocol = PULL_PROTOCOLS.find(({ parameters }) => parameters.effort.value === kind)!.id;
  writeSimulated(
    args,
    {
      nameOf: (seed) => `isometric-${placement}-${kind}-${level}-${rateHz}hz-${seed}`,
      recordingOf: (seed): SimulatedRecording => {
        const rest = { restLoadN: placement === 'platform' ? LEG_N : 0 };
        const pulls = simulatePulls({ kind, level, seed, sampleRateHz: rateHz, faults: rest });
        const { trace, truth, faults } = pulls;
        return {
          trace,
          made: `isometric, ${placement}, ${kind}, level ${level}, ${rateHz} Hz`,
          known: { truth, faults },
          manifestRow: ['', '', '', 'isometric', placement, protocol],
          truthRows: truthRows(pulls),
        };
      },
      manifestColumns: MANIFEST_COLUMNS,
      truthColumns: TRUTH_COLUMNS,
      trueThings: 'efforts',
    },
    io,
  );
  return 0;
}

function truthRows({ truth }: SimulatedPulls): string[][] {
  return truth.efforts.map((effort, index) => [
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
