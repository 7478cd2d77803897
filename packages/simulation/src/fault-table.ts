/** How disturbed a simulated recording is; `free` is as in the field, by people who keep no beat. */
export type Level = 'clean' | 'typical' | 'hard' | 'field' | 'free';

/** Where the simulated sensor sits. */
export type SimulatedPlacement = 'heel' | 'foot' | 'trunk' | 'platform';

/** The least and the greatest amount; one amount is drawn for each set, evenly between them. */
export type Range = readonly [low: number, high: number];

/** One fault: its unit, what it is, and its range at each level. */
export interface FaultRow {
  readonly unit: string;
  readonly meaning: string;
  readonly amounts: readonly [clean: Range, typical: Range, hard: Range, field: Range, free: Range];
}

const none: Range = [0, 0];

/**
 * One row of a table of faults.
 *
 * @param unit - unit of the amounts [-]
 * @param meaning - what the fault is [-]
 * @param clean - range at each level [unit]
 * @param typical - the same [unit]
 * @param hard - the same [unit]
 * @param field - the same [unit]
 * @param free - the same, of people who keep no beat; as in the field when left out [unit]
 * @returns the row [unit]
 *
 * Source: ours
 */
export function faultRow(
  unit: string,
  meaning: string,
  clean: Range,
  typical: Range,
  hard: Range,
  field: Range,
  free: Range = field,
): FaultRow {
  return { unit, meaning, amounts: [clean, typical, hard, field, free] };
}

/** Every fault of a simulated heel-raise set and its size at each level. All sizes are ours. */
export const faultTable = {
  // the person
  ownTempoChance: faultRow(
    '-',
    "chance of a tempo of one's own, 0.6 to 6 s a cycle",
    [0.03, 0.03],
    [0.03, 0.03],
    [0.03, 0.03],
    [0.03, 0.03],
    [0.15, 0.15],
  ),
  beatSpread: faultRow(
    '-',
    'spread of the tempo between people about 2 s a cycle, sd',
    [0.08, 0.08],
    [0.08, 0.08],
    [0.08, 0.08],
    [0.08, 0.08],
    [0.2, 0.2],
  ),
  longHoldChance: faultRow(
    '-',
    'chance of a person who holds the top for 0.35 to 0.9 of the rise',
    [0.1, 0.1],
    [0.1, 0.1],
    [0.1, 0.1],
    [0.1, 0.1],
    [0.5, 0.5],
  ),
  fatigueLoss: faultRow(
    '-',
    'share of the height lost by the last repetition',
    [0, 0.03],
    [0, 0.3],
    [0, 0.4],
    [0, 0.4],
  ),
  heightSpread: faultRow('-', 'spread of the heights, sd', [0.01, 0.02], [0.02, 0.06], [0.04, 0.1], [0.04, 0.1]),
  tempoDrift: faultRow('-', 'lengthening of the cycle over the set', none, [-0.05, 0.15], [-0.1, 0.3], [-0.1, 0.3]),
  tempoSpread: faultRow('-', 'spread of the durations, sd', [0.01, 0.02], [0.03, 0.07], [0.05, 0.12], [0.05, 0.12]),
  partSpread: faultRow(
    '-',
    'spread of rise, hold and fall apart from that, sd',
    [0.005, 0.01],
    [0.01, 0.02],
    [0.02, 0.03],
    [0.02, 0.03],
    [0.05, 0.12],
  ),
  incompleteShare: faultRow(
    '-',
    'returns that stop 10-35 % above the bottom',
    none,
    [0, 0.06],
    [0.1, 0.25],
    [0.1, 0.25],
  ),
  partialShare: faultRow('-', 'repetitions of half the height', none, [0, 0.03], [0, 0.06], [0, 0.06]),
  restShare: faultRow('-', 'stays of 0.6-2.5 s at the bottom', none, [0, 0.05], [0, 0.1], [0, 0.1]),
  pauseShare: faultRow('-', 'pauses of 2.5-8 s', none, [0, 0.03], [0, 0.05], [0, 0.06]),
  pauseBounceShare: faultRow('-', 'pauses with small bounces of 4-14 mm', none, none, none, [0.3, 0.7]),
  dipShare: faultRow('-', 'tops with a dip of 10-40 %', none, none, none, [0, 0.1]),
  kneeAssistShare: faultRow('-', 'rises begun from a bent knee', none, none, [0, 0.06], [0, 0.06]),
  kneeBendM: faultRow('m', 'drop of the body in a bent-knee start', none, none, [0.008, 0.02], [0.008, 0.02]),
  leanRad: faultRow('rad', 'slow lean of the trunk over the set', none, [0, 0.03], [0, 0.1], [0, 0.1]),
  pelvicTiltRad: faultRow('rad', 'tilt of the pelvis in phase with the rise', none, [0, 0.03], [0, 0.06], [0, 0.06]),
  handSupport: faultRow('-', 'share of body weight on the hands, slow', none, [0, 0.01], [0, 0.03], [0, 0.03]),
  handPushShare: faultRow('-', 'rises helped by 2-6 % of body weight at the hands', none, none, [0, 0.05], [0, 0.05]),
  heelImpactShare: faultRow('-', 'returns that hit the floor', none, [0, 0.1], [0, 0.2], [0.1, 0.5]),
  heelImpactSpeed: faultRow('m/s', 'speed taken away by such a hit', none, [0.02, 0.06], [0.03, 0.1], [0.03, 0.15]),
  swayHeelM: faultRow('m', 'sway at the heel, rms', none, [0.0002, 0.0006], [0.0023, 0.0025], [0.0023, 0.0025]),
  swayCornerHz: faultRow(
    'Hz',
    'corner above which the sway at the heel falls',
    [0.15, 0.4],
    [0.15, 0.4],
    [0.15, 0.4],
    [0.15, 0.4],
    [0.2, 0.6],
  ),
  trunkWobble: faultRow(
    'm/s2/sqrt(Hz)',
    'sway and skin at the trunk, vertical, below its corner',
    [0.004, 0.008],
    [0.04, 0.07],
    [0.112, 0.16],
    [0.112, 0.16],
    [0.13, 0.185],
  ),
  platformWobble: faultRow(
    'm/s2/sqrt(Hz)',
    'sway of the body on the platform, force per mass',
    [0.004, 0.008],
    [0.04, 0.07],
    [0.118, 0.168],
    [0.118, 0.168],
    [0.14, 0.2],
  ),
  wobblePace: faultRow(
    '-',
    'power by which wobble grows with tempo; 1 at 2 s a cycle',
    [0.5, 1],
    [0.5, 1],
    [0.5, 1],
    [0.5, 1],
  ),
  wobbleCornerHz: faultRow('Hz', 'corner above which the wobble falls', [2, 5], [2, 5], [2, 5], [2, 5]),
  // the model of the body that the tester uses
  leverError: faultRow(
    '-',
    'error of the measured heel lever, sd',
    none,
    [0.008, 0.008],
    [0.008, 0.008],
    [0.008, 0.008],
  ),
  pivotMigration: faultRow('-', 'lever gained as the pivot moves to the toes', none, [0, 0.01], [0, 0.01], [0, 0.01]),
  // the sensor
  stampJitter: faultRow(
    '-',
    'jitter of the stamps, share of the interval, sd',
    none,
    [0, 0.05],
    [0.1, 0.3],
    [0.1, 0.3],
  ),
  lossShare: faultRow('-', 'samples lost in packets of up to 0.15 s', none, [0, 0.005], [0.005, 0.03], [0.005, 0.03]),
  gapCount: faultRow('-', 'gaps of 0.3-0.8 s', none, none, [0, 1.5], [0, 2.5]),
  resolutionBits: faultRow('bit', 'steps over the range of the sensor', [24, 24], [16, 16], [12, 12], [12, 12]),
  accelerometerRange: faultRow(
    'm/s2',
    'range of the accelerometer, each way',
    [157, 157],
    [78, 157],
    [39, 78],
    [39, 78],
  ),
  accelerometerNoise: faultRow(
    'm/s2/sqrt(Hz)',
    'white noise of each axis',
    [0.001, 0.001],
    [0.002, 0.005],
    [0.005, 0.02],
    [0.005, 0.02],
  ),
  accelerometerOffset: faultRow('m/s2', 'offset of each axis, sd', none, [0.05, 0.05], [0.12, 0.12], [0.12, 0.12]),
  gyroscopeNoise: faultRow(
    'rad/s/sqrt(Hz)',
    'white noise of each axis',
    [0.0001, 0.0001],
    [0.0002, 0.0005],
    [0.0005, 0.002],
    [0.0005, 0.002],
  ),
  gyroscopeBias: faultRow('rad/s', 'bias of each axis, sd', none, [0.005, 0.01], [0.01, 0.03], [0.01, 0.03]),
  gyroscopeDrift: faultRow(
    'rad/s/min',
    'drift of the bias of each axis, sd',
    none,
    [0.0005, 0.001],
    [0.001, 0.004],
    [0.001, 0.004],
  ),
  stringNoiseM: faultRow(
    'm',
    'noise of the string, sd',
    [0.0001, 0.0001],
    [0.0002, 0.0004],
    [0.0005, 0.001],
    [0.0005, 0.001],
  ),
  stringDriftM: faultRow(
    'm/min',
    'drift of the zero of the string',
    none,
    [-0.0005, 0.0005],
    [-0.003, 0.003],
    [-0.003, 0.003],
  ),
  forceNoiseN: faultRow('N', 'noise of the platform, sd', [0.3, 0.3], [0.5, 1.5], [1.5, 4], [1.5, 4]),
  forceOffsetN: faultRow('N', 'offset of the platform', none, [-1, 1], [-5, 5], [-5, 5]),
  forceDriftN: faultRow('N/min', 'drift of the platform', none, [-1, 1], [-6, 6], [-6, 6]),
  spikesPerMinute: faultRow('1/min', 'wild single samples', none, none, [0, 1], [1, 6]),
  slipChance: faultRow('-', 'chance that the sensor slips once', none, none, none, [0.4, 0.4]),
  slipRad: faultRow('rad', 'turn of a slipped sensor', none, none, none, [0.03, 0.12]),
  slipM: faultRow('m', 'shift of a slipped string', none, none, none, [0.002, 0.006]),
  // before and after the set
  quietBeforeS: faultRow('s', 'quiet stance before the set', [3, 5], [2, 5], [1.5, 4], [1, 4]),
  quietAfterS: faultRow('s', 'quiet stance after the set', [2, 4], [1.5, 4], [1, 3], [0.8, 3]),
  stridesChance: faultRow('-', 'chance of strides or footfalls before the set', none, none, none, [0.7, 0.7]),
  hookingChance: faultRow(
    '-',
    'chance that the string is hooked on before the set and off after it',
    none,
    none,
    none,
    [0.7, 0.7],
  ),
  stepOnChance: faultRow('-', 'chance that the platform is empty first', none, [0.5, 0.5], [0.5, 0.5], [0.9, 0.9]),
  walkOffChance: faultRow('-', 'chance of strides or footfalls after the set', none, none, none, [0.7, 0.7]),
  stepOffChance: faultRow(
    '-',
    'chance that the platform is left after the set',
    none,
    [0.3, 0.3],
    [0.3, 0.3],
    [0.8, 0.8],
  ),
  emptyChance: faultRow('-', 'chance that no repetition follows at all', none, none, none, [0.05, 0.05]),
} as const satisfies Record<string, FaultRow>;

/** Name of a row of the table of faults. */
export type FaultName = keyof typeof faultTable;

/** The amounts that one simulated recording was made with. */
export type FaultAmounts = Readonly<Record<FaultName, number>>;

const levels: readonly Level[] = ['clean', 'typical', 'hard', 'field', 'free'];

/**
 * Least and greatest amount of a fault at a level.
 *
 * @param row - row of a table of faults [-]
 * @param level - how disturbed [-]
 * @returns range from which each recording draws [unit of the row]
 *
 * Source: ours
 */
export function faultRange(row: FaultRow, level: Level): Range {
  return row.amounts[levels.indexOf(level)];
}

/**
 * A table of faults as Markdown: one row for each fault, one column for each level.
 *
 * @param table - rows by name [unit of the row]
 * @returns text with line breaks [-]
 *
 * Source: ours
 */
export function formatFaultTable(table: Readonly<Record<string, FaultRow>> = faultTable): string {
  const lines = [
    '| fault | unit | what | clean | typical | hard | field | free |',
    '|---|---|---|---|---|---|---|---|',
  ];
  for (const [name, { unit, meaning, amounts }] of Object.entries(table)) {
    const cells = amounts.map(([low, high]) => (low === high ? `${low}` : `${low} to ${high}`));
    lines.push(`| ${[name, unit, meaning, ...cells].join(' | ')} |`);
  }
  return lines.join('\n');
}
