import { type FaultRow, faultRow } from '../fault-table.ts';

const none = [0, 0] as const;

/** Every fault of simulated isometric efforts and its size at each level. All sizes are ours. */
export const pullTable = {
  // the person
  unsteadiness: faultRow(
    '-',
    'slow unsteadiness of the force, share of it, rms',
    none,
    [0.003, 0.008],
    [0.008, 0.015],
    [0.008, 0.015],
  ),
  tremor: faultRow(
    '-',
    'tremor at 8-12 Hz, share of the force, rms',
    none,
    [0.001, 0.003],
    [0.003, 0.007],
    [0.003, 0.007],
  ),
  yielding: faultRow('-', 'share of the force lost while it is held', [0, 0.02], [0, 0.08], [0, 0.15], [0, 0.15]),
  pretensionShare: faultRow('-', 'efforts with tension creeping in before', none, [0, 0.1], [0.1, 0.3], [0.1, 0.3]),
  pretensionN: faultRow('N', 'such tension', none, [1, 4], [3, 12], [3, 12]),
  dipShare: faultRow('-', 'efforts with a countermovement before', none, none, [0, 0.2], [0, 0.2]),
  dipN: faultRow('N', 'depth of such a countermovement', none, none, [5, 25], [5, 25]),
  // the sensor
  restLoadN: faultRow('N', 'weight of the resting leg', [0, 0], [0, 90], [0, 90], [0, 90]),
  offsetN: faultRow('N', 'offset of the zero', none, [-3, 3], [-10, 10], [-10, 10]),
  driftN: faultRow('N/min', 'drift of the zero', none, [-2, 2], [-10, 10], [-10, 10]),
  noiseN: faultRow('N', 'white noise, sd', [0.1, 0.1], [0.5, 1.5], [2, 5], [2, 5]),
  knocksPerMinute: faultRow('1/min', 'knocks against the frame, of a few milliseconds', none, [0, 1], [3, 10], [3, 10]),
  knockN: faultRow('N', 'force of a knock', none, [20, 60], [30, 200], [30, 200]),
  stampJitter: faultRow(
    '-',
    'jitter of the stamps, share of the interval, sd',
    none,
    [0, 0.05],
    [0.1, 0.3],
    [0.1, 0.3],
  ),
  lossShare: faultRow('-', 'samples lost in packets of up to 0.15 s', none, none, [0, 0.005], [0, 0.01]),
  gapCount: faultRow('-', 'gaps of 0.3-0.8 s', none, none, none, [0, 1.5]),
  resolutionBits: faultRow('bit', 'steps over the range of the sensor', [24, 24], [16, 24], [12, 16], [12, 16]),
  rangeN: faultRow('N', 'range of the sensor, each way', [5000, 5000], [3000, 5000], [3000, 5000], [1500, 3000]),
} as const satisfies Record<string, FaultRow>;

/** Name of a row of the table of faults of isometric efforts. */
export type PullFaultName = keyof typeof pullTable;

/** The amounts that one simulated recording of isometric efforts was made with. */
export type PullFaults = Readonly<Record<PullFaultName, number>>;
