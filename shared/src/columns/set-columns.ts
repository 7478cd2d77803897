import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';
import { BELOW_SHARES, COUNT_SHARES } from './height-shares.ts';

const { figure, word, flag } = columnsOf('set');

/** A figure with the two bounds of its 95 % interval. */
function estimate(key: string, unit: string, field: string, factor: number, description: string): Column[] {
  const at = key.replace(/_(mm|m|s|percent)$/, '');
  const suffix = key.slice(at.length);
  return [
    figure(key, `${field}.value`, unit, factor, description),
    figure(`${at}_low${suffix}`, `${field}.low`, unit, factor, `lower 95 % bound of ${key.split('.').at(-1)}`),
    figure(`${at}_high${suffix}`, `${field}.high`, unit, factor, `upper 95 % bound of ${key.split('.').at(-1)}`),
  ];
}

function work(prefix: string, field: string, of: string): Column[] {
  return (['heel', 'ankle', 'platform', 'rise', 'seated'] as const).flatMap((kind) => [
    figure(`${prefix}_${kind}_j`, `${field}.${kind}J`, 'J', 1, `work of ${of} under the ${kind} convention`),
    figure(
      `${prefix}_${kind}_u_j`,
      `${field}.${kind}UJ`,
      'J',
      1,
      `standard uncertainty of ${prefix.split('.').at(-1)}_${kind}_j`,
    ),
  ]);
}

const count: readonly Column[] = [
  figure('count.attempted', 'count.attempted', '1', 1, 'attempted repetitions'),
  figure('count.valid', 'count.valid', '1', 1, 'repetitions that pass at face value'),
  figure('count.scored', 'count.scored', '1', 1, 'those of them before the end of the test'),
  figure('count.low', 'count.low', '1', 1, 'lower 95 % bound of the attempted count'),
  figure('count.high', 'count.high', '1', 1, 'upper 95 % bound of the attempted count'),
  figure('count.valid_low', 'count.validLow', '1', 1, 'lower 95 % bound of the valid count'),
  figure('count.valid_high', 'count.validHigh', '1', 1, 'upper 95 % bound of the valid count'),
  figure('count.scored_low', 'count.scoredLow', '1', 1, 'lower 95 % bound of the score'),
  figure('count.scored_high', 'count.scoredHigh', '1', 1, 'upper 95 % bound of the score'),
  figure('count.borderline', 'count.borderline', '1', 1, 'repetitions near a threshold or with a sign to look at'),
  figure('count.cannot_tell', 'count.cannotTell', '1', 1, 'repetitions on which nobody can tell'),
  flag('count.censored', 'count.censored', 'the score is a lower bound, because a cap was reached'),
];

const frame: readonly Column[] = [
  word('reference.rule', 'reference.rule', 'how the reference was formed'),
  figure('reference.height_mm', 'reference.heightM', 'mm', 1000, 'height or rise that repetitions are held against'),
  figure('reference.height_u_mm', 'reference.heightUM', 'mm', 1000, 'standard uncertainty of the reference'),
  flag('reference.raised', 'reference.raised', 'an early repetition took the place of the practice raises'),
  word('end.rule', 'end.rule', 'what ended the test, as far as the trace shows'),
  word('end.kind', 'end.kind', 'kind of the faults that ended it'),
  figure('end.at_repetition', 'end.atRepetition', '1', 1, 'last repetition that belongs to the test'),
  figure('end.at_s', 'end.atS', 's', 1, 'end of that repetition'),
  word('end.reason_given', 'end.reasonGiven', 'why the test ended, as recorded by the tester'),
  word('end.class', 'end.class', 'capacity, tolerance, incomplete, censored, probe or unknown'),
  word('effort.good', 'effort.good', 'whether the effort shows capacity: yes, no or cannot_tell'),
  word('effort.reason', 'effort.reason', 'why'),
  word('gate.usable', 'gate.usable', 'whether the trial may be interpreted: yes, no or cannot_tell'),
  figure('body_weight_n', 'bodyWeightN', 'N', 1, 'body weight read from the quiet stance on the platform'),
  figure('body_weight_u_n', 'bodyWeightUN', 'N', 1, 'standard uncertainty of body_weight_n'),
];

const seated: readonly Column[] = [
  figure('seated.load_kg', 'seated.massKg', 'kg', 1, 'load on the knee'),
  figure('seated.load_u_kg', 'seated.massUKg', 'kg', 1, 'standard uncertainty of the load'),
  figure('seated.load_percent', 'seated.percentOfBodyMass', '%', 1, 'load in percent of body mass'),
  figure('seated.repetitions', 'seated.repetitions', '1', 1, 'valid repetitions at that load before the test ended'),
  figure('seated.repetitions_low', 'seated.repetitionsLow', '1', 1, 'lower 95 % bound of seated.repetitions'),
  figure('seated.repetitions_high', 'seated.repetitionsHigh', '1', 1, 'upper 95 % bound of seated.repetitions'),
  figure('seated.maximum_target', 'seated.maximum.target', '1', 1, 'repetitions of the load that is named next'),
  figure(
    'seated.maximum_kg',
    'seated.maximum.massKg',
    'kg',
    1,
    'load for so many repetitions; empty outside the counts it may be read from',
  ),
  figure('seated.maximum_low_kg', 'seated.maximum.lowKg', 'kg', 1, 'least that formulas and count leave open'),
  figure('seated.maximum_high_kg', 'seated.maximum.highKg', 'kg', 1, 'greatest that formulas and count leave open'),
  word('seated.maximum_reason', 'seated.maximum.reason', 'why no such load is named'),
];

const size: readonly Column[] = [
  figure('measures.heights_measured', 'measures.heightsMeasured', '1', 1, 'repetitions that sums and means run over'),
  figure('measures.peak_height_mm', 'measures.peakHeightM', 'mm', 1000, 'greatest height or rise'),
  figure('measures.mean_height_mm', 'measures.meanHeightM', 'mm', 1000, 'mean height or rise'),
  figure('measures.first_three_height_mm', 'measures.firstThreeHeightM', 'mm', 1000, 'mean of the first three'),
  figure('measures.last_three_height_mm', 'measures.lastThreeHeightM', 'mm', 1000, 'mean of the last three'),
  ...estimate('measures.displacement_m', 'm', 'measures.displacementM', 1, 'sum of heights or rises, all attempted'),
  ...estimate(
    'measures.scored_displacement_m',
    'm',
    'measures.scoredDisplacementM',
    1,
    'the same over scored repetitions',
  ),
  ...work('measures.work', 'measures.work', 'all attempted repetitions'),
  ...work('measures.scored_work', 'measures.scoredWork', 'scored repetitions'),
  figure('measures.mean_power_w', 'measures.meanPowerW', 'W', 1, 'mean over repetitions of the power of the rise'),
  figure('measures.peak_power_w', 'measures.peakPowerW', 'W', 1, 'greatest power of any rise'),
];

const course: readonly Column[] = [
  figure('measures.time_to_end_s', 'measures.timeToEndS', 's', 1, 'first start to the end of the test'),
  figure(
    'measures.time_under_tension_s',
    'measures.timeUnderTensionS',
    's',
    1,
    'sum of start to end over all attempted',
  ),
  figure('measures.mean_period_s', 'measures.tempo.meanPeriodS', 's', 1, 'mean time from top to top'),
  figure('measures.repetitions_per_min', 'measures.tempo.perMinute', '/min', 1, 'repetitions per minute'),
  figure('measures.mean_up_s', 'measures.tempo.meanUpS', 's', 1, 'mean time up'),
  figure('measures.mean_top_s', 'measures.tempo.meanTopS', 's', 1, 'mean hold at the top'),
  figure('measures.mean_down_s', 'measures.tempo.meanDownS', 's', 1, 'mean time down'),
  figure('measures.mean_low_s', 'measures.tempo.meanLowS', 's', 1, 'mean time at the bottom'),
  figure('measures.mean_beat_error_ms', 'measures.tempo.meanBeatErrorS', 'ms', 1000, 'mean period minus the beat'),
  ...estimate('measures.period_drift_s', 's', 'measures.tempo.driftS', 1, 'change of the period per repetition'),
  ...estimate('measures.height_slope_mm', 'mm', 'measures.fatigue.slopeM', 1000, 'change of height per repetition'),
  ...estimate(
    'measures.height_slope_percent',
    '%',
    'measures.fatigue.slopePercent',
    1,
    'the same in percent of the reference',
  ),
  figure(
    'measures.height_drop',
    'measures.fatigue.dropFraction',
    '1',
    1,
    'drop from the first three to the last three',
  ),
];

const shares: readonly Column[] = [
  ...BELOW_SHARES.map((share, i) => {
    const percent = Math.round(100 * share);
    const field = `measures.fatigue.firstBelow.${i}.repetition`;
    const what = `first repetition whose mean with the two before lies below ${percent} % of the reference`;
    return figure(`measures.first_below_${percent}`, field, '1', 1, what);
  }),
  ...COUNT_SHARES.map((share, i) => {
    const percent = Math.round(100 * share);
    const what = `repetitions that reach ${percent} % of the highest`;
    return figure(`measures.count_from_${percent}`, `measures.countAtFraction.${i}.count`, '1', 1, what);
  }),
];

/** The figures of one set, without its lists. Empty means not measured; zero means zero. */
export const SET_COLUMNS: readonly Column[] = [...count, ...frame, ...seated, ...size, ...course, ...shares];
