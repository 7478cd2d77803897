import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';
import { FORCE_UNITS, type ForceUnit } from './force-units.ts';

const { figure, word, list, flag } = columnsOf('pull');

function withU(key: string, uKey: string, field: string, unit: string, description: string): Column[] {
  return [
    figure(key, `${field}.value`, unit, 1, description),
    figure(uKey, `${field}.u`, unit, 1, `standard uncertainty of ${key.split('.').at(-1)}`),
  ];
}

/** The calibration that forces were counted by; they stand in every table that holds a force. */
export const CALIBRATION_COLUMNS: readonly Column[] = [
  figure(
    'calibration_u_percent',
    'calibrationRelativeU',
    '%',
    100,
    'standard uncertainty of the calibration, part of every uncertainty; empty is not known and then left out of them',
  ),
  figure(
    'calibration_zero_u',
    'calibrationZeroU',
    '1',
    1,
    'standard uncertainty of the zero in the unit of the recording, part of those of gross forces; empty is not known and left out',
  ),
  word(
    'calibration_id',
    'calibrationId',
    'what the calibration is known by; forces of one calibration share its error',
  ),
];

const rig: readonly Column[] = [
  word('unit', 'unit', 'unit of the recording: N or N.m'),
  figure('sample_rate_hz', 'sampleRateHz', 'Hz', 1, 'median sampling rate'),
  figure('polarity.sign', 'polarity.sign', '1', 1, 'sign that turns pulls upwards'),
  flag('polarity.clear', 'polarity.clear', 'whether the sign is plain'),
  ...CALIBRATION_COLUMNS,
];

const count: readonly Column[] = [
  figure('count.found', 'found', '1', 1, 'efforts found'),
  figure('count.accepted', 'accepted', '1', 1, 'efforts that count'),
  figure('count.cannot_tell', 'cannotTell', '1', 1, 'efforts of which nobody can tell whether they count'),
  figure('count.warm_up', 'warmUps', '1', 1, 'efforts that are warm-up pushes and no trials'),
  figure(
    'count.warm_up_told',
    'warmUp.told',
    '1',
    1,
    'warm-up pushes as told; empty where nobody said, and the sizes of the efforts tell',
  ),
];

/** Forces of the efforts that count, in one unit; those of the other unit are empty. */
function inUnit({ suffix, field, unit, rate }: ForceUnit): Column[] {
  const force = (key: string, path: string, description: string): Column[] =>
    withU(`${key}_${suffix}`, `${key}_u_${suffix}`, `${field}.${path}`, unit, description);
  return [
    ...force('score.net', 'score.net', 'the result by the rule of the protocol, above the load at rest'),
    ...force('score.gross', 'score.gross', 'the same as the sensor reads it'),
    ...withU(
      `score.rate_${suffix}_per_s`,
      `score.rate_u_${suffix}_per_s`,
      `${field}.score.rate`,
      rate,
      'the result of a test of the rate of rise: mean of the best few',
    ),
    ...force('best_mean.net', 'bestMean.net', 'greatest mean over the window of the score, net'),
    ...force('best_mean.gross', 'bestMean.gross', 'the same effort, load at rest included'),
    ...force('best_peak.net', 'bestPeak.net', 'greatest peak, net'),
    ...force('best_peak.gross', 'bestPeak.gross', 'the same effort, load at rest included'),
    ...force('trials.mean_of_best', 'meanOfBest', 'mean of the best few means, net'),
    ...force('rest_load', 'restLoad', 'load at rest beside the efforts'),
  ];
}

/** What a figure is in other units, as far as mass and lever were measured. */
function derived(key: string, field: string): Column[] {
  return [
    ...withU(`${key}.n_per_kg`, `${key}.n_per_kg_u`, `${field}.newtonPerKg`, 'N/kg', 'net, per kilogram of body mass'),
    ...withU(
      `${key}.times_body_weight`,
      `${key}.times_body_weight_u`,
      `${field}.timesBodyWeight`,
      '1',
      'net, in multiples of body weight',
    ),
    ...withU(
      `${key}.torque_nm`,
      `${key}.torque_u_nm`,
      `${field}.newtonMetre`,
      'N.m',
      'net torque: measured, or the force on a measured lever',
    ),
    ...withU(
      `${key}.nm_per_kg`,
      `${key}.nm_per_kg_u`,
      `${field}.newtonMetrePerKg`,
      'N.m/kg',
      'net torque per kilogram of body mass',
    ),
  ];
}

const trials: readonly Column[] = [
  word('score.rule', 'scoreRule', 'what the result is, by the protocol'),
  figure('score.effort', 'scoreEffort', '1', 1, 'effort that gave the result; empty for a mean of several'),
  figure('best_mean.effort', 'trials.bestMeanEffort', '1', 1, 'effort with the greatest mean'),
  figure('best_peak.effort', 'trials.bestPeakEffort', '1', 1, 'effort with the greatest peak'),
  figure('trials.of', 'trials.of', '1', 1, 'how many means mean_of_best is made from'),
  figure('trials.variation', 'trials.variation', '1', 1, 'standard deviation over mean of the scores'),
  ...withU('trials.spread', 'trials.spread_u', 'trials.spread', '1', 'difference of the best two scores over the best'),
  word('trials.consistency', 'trials.consistency', 'how close the best two lie: good, fair or poor'),
  list('trials.another', 'trials.another', 'why another effort is asked for; empty when none is'),
  flag('trials.may_repeat', 'trials.mayRepeat', 'whether the protocol allows another effort'),
];

const frame: readonly Column[] = [
  word('effort.good', 'effort.good', 'whether the efforts show a maximum: yes, no or cannot_tell'),
  list('effort.reasons', 'effort.reasons', 'why not, or what is not known'),
  word('end.reason_given', 'end.reasonGiven', 'why the test ended, as recorded by the tester'),
  word('end.class', 'end.class', 'capacity, tolerance, incomplete or unknown'),
  word('gate.usable', 'gate.usable', 'whether the test may be interpreted: yes or cannot_tell'),
];

/** The figures of one isometric test, without its list of efforts. Empty means not measured; zero means zero. */
export const PULL_COLUMNS: readonly Column[] = [
  ...rig,
  ...count,
  ...trials,
  ...FORCE_UNITS.flatMap(inUnit),
  ...derived('best_mean', 'derived.bestMean'),
  ...derived('best_peak', 'derived.bestPeak'),
  ...frame,
];
