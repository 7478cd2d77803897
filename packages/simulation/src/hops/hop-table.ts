import { type FaultRow, faultRow } from '../fault-table.ts';

const none = [0, 0] as const;

/** Every fault of a simulated hop series and its size at each level. All sizes are ours. */
export const hopTable = {
  // the person
  speedSpread: faultRow(
    '-',
    'spread of the take-off speeds, sd',
    [0.005, 0.01],
    [0.02, 0.05],
    [0.04, 0.09],
    [0.04, 0.09],
  ),
  speedLoss: faultRow('-', 'share of the take-off speed lost by the last hop', none, [0, 0.15], [0, 0.3], [0, 0.3]),
  stiffnessSpread: faultRow('-', 'spread of the stiffness, sd', [0.01, 0.01], [0.02, 0.06], [0.04, 0.1], [0.04, 0.1]),
  pauseCount: faultRow('-', 'stops of 0.8-1.6 s on the ground between two hops', none, none, [0, 1.4], [0, 1.4]),
  impactShare: faultRow(
    '-',
    'share of the body mass that hits the ground first',
    none,
    [0, 0.008],
    [0.005, 0.015],
    [0.005, 0.015],
  ),
  swayShare: faultRow(
    '-',
    'unsteadiness of the standing force, share of body weight, rms',
    none,
    [0.003, 0.01],
    [0.01, 0.03],
    [0.01, 0.03],
  ),
  // the platform
  noiseN: faultRow('N', 'white noise of the platform, sd', [0.2, 0.2], [0.5, 2], [2, 6], [2, 6]),
  offsetN: faultRow('N', 'offset of the zero', none, [-5, 5], [-25, 25], [-25, 25]),
  driftN: faultRow('N/min', 'drift of the zero', none, [-5, 5], [-20, 20], [-20, 20]),
  ringShare: faultRow(
    '-',
    'ringing of the platform at 60-180 Hz, share of the step that sets it off',
    none,
    [0, 0.05],
    [0.05, 0.15],
    [0.05, 0.15],
  ),
  rangeN: faultRow('N', 'range of the platform', [10000, 10000], [8000, 10000], [6000, 10000], [6000, 10000]),
  // the sensor on the foot
  accelerometerNoise: faultRow(
    'm/s2/sqrt(Hz)',
    'noise of the accelerometer',
    [0.001, 0.001],
    [0.002, 0.004],
    [0.004, 0.01],
    [0.004, 0.01],
  ),
  accelerometerOffset: faultRow('m/s2', 'offset of each axis, sd', none, [0.05, 0.15], [0.1, 0.3], [0.1, 0.3]),
  gyroscopeNoise: faultRow(
    'rad/s/sqrt(Hz)',
    'noise of the gyroscope',
    [0.0001, 0.0001],
    [0.0002, 0.0004],
    [0.0004, 0.001],
    [0.0004, 0.001],
  ),
  softS: faultRow(
    's',
    'time over which shoe and skin spread a blow, sd',
    [0.002, 0.002],
    [0.002, 0.005],
    [0.004, 0.009],
    [0.004, 0.009],
  ),
  wobble: faultRow('m/s2', 'wobble of the strap after each landing', none, [0, 5], [5, 20], [5, 20]),
  // both
  stampJitter: faultRow(
    '-',
    'jitter of the stamps, share of the interval, sd',
    none,
    [0, 0.05],
    [0.1, 0.3],
    [0.1, 0.3],
  ),
  lossShare: faultRow('-', 'samples lost in packets of up to 0.15 s', none, none, none, [0, 0.004]),
  gapCount: faultRow('-', 'gaps of 0.3-0.8 s', none, none, none, [0, 1.4]),
  resolutionBits: faultRow('bit', 'steps over the range of the sensor', [24, 24], [16, 24], [12, 16], [12, 16]),
} as const satisfies Record<string, FaultRow>;

/** Name of a row of the table of faults of hop series. */
export type HopFaultName = keyof typeof hopTable;

/** The amounts that one simulated hop series was made with. */
export type HopFaults = Readonly<Record<HopFaultName, number>>;
