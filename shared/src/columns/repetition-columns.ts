import { CRITERION_IDS } from '../criterion.ts';
import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';

const { figure, word, flag } = columnsOf('repetition');

const place: readonly Column[] = [
  figure('index', 'index', '1', 1, 'number of the repetition in the set, from 1'),
  figure('start_s', 'startS', 's', 1, 'leaving the bottom, on the clock of the recording'),
  figure('start_u_s', 'startUS', 's', 1, 'standard uncertainty of the start'),
  figure('top_s', 'topS', 's', 1, 'instant of greatest height'),
  figure('top_u_s', 'topUS', 's', 1, 'standard uncertainty of the top'),
  figure('end_s', 'endS', 's', 1, 'back at the bottom'),
  figure('end_u_s', 'endUS', 's', 1, 'standard uncertainty of the end'),
];

const size: readonly Column[] = [
  figure('height_mm', 'heightM', 'mm', 1000, 'greatest height of the heel above the quiet stance'),
  figure('height_u_mm', 'heightUM', 'mm', 1000, 'standard uncertainty of the height'),
  figure(
    'rise_mm',
    'riseM',
    'mm',
    1000,
    'greatest rise of the body above the quiet stance; not the height of the heel',
  ),
  figure('rise_u_mm', 'riseUM', 'mm', 1000, 'standard uncertainty of the rise'),
  figure('depth_mm', 'depthM', 'mm', 1000, 'bottom after the repetition below the level of rest'),
  figure('percent_of_reference', 'percentOfReference', '%', 1, 'height or rise in percent of the reference'),
  figure('percent_of_reference_u', 'percentOfReferenceU', '%', 1, 'standard uncertainty of that percentage'),
];

const tempo: readonly Column[] = [
  figure('up_s', 'upS', 's', 1, 'leaving the bottom to the hold at the top'),
  figure('top_hold_s', 'topHoldS', 's', 1, 'hold at the top'),
  figure('down_s', 'downS', 's', 1, 'hold at the top to the bottom'),
  figure('low_s', 'lowS', 's', 1, 'at the bottom until the next repetition starts; empty after the last'),
  figure('cycle_s', 'cycleS', 's', 1, 'start to next start; empty for the last'),
  figure('period_s', 'periodS', 's', 1, 'top of the repetition before to this top; empty for the first'),
  figure('beat_error_ms', 'beatErrorS', 'ms', 1000, 'period minus the beat of the protocol'),
];

const work: readonly Column[] = [
  figure('work_heel_j', 'work.heelJ', 'J', 1, 'work by the height of the heel: (m + m_e) g h'),
  figure('work_heel_u_j', 'work.heelUJ', 'J', 1, 'standard uncertainty of work_heel_j'),
  figure('work_ankle_j', 'work.ankleJ', 'J', 1, 'work by the model rise of the ankle: (m + m_e) g dz'),
  figure('work_ankle_u_j', 'work.ankleUJ', 'J', 1, 'standard uncertainty of work_ankle_j'),
  figure('work_platform_j', 'work.platformJ', 'J', 1, 'positive work of the force under the foot over the rise'),
  figure('work_platform_u_j', 'work.platformUJ', 'J', 1, 'standard uncertainty of work_platform_j'),
  figure('work_rise_j', 'work.riseJ', 'J', 1, 'work by the measured rise of the body: (m + m_e) g dz'),
  figure('work_rise_u_j', 'work.riseUJ', 'J', 1, 'standard uncertainty of work_rise_j'),
  figure('work_seated_j', 'work.seatedJ', 'J', 1, 'seated: load on the knee times g times the model rise of the knee'),
  figure('work_seated_u_j', 'work.seatedUJ', 'J', 1, 'standard uncertainty of work_seated_j'),
  figure('mean_power_w', 'meanPowerW', 'W', 1, "work by the placement's own convention over the time up"),
  figure('peak_power_w', 'peakPowerW', 'W', 1, 'greatest power during the rise, low-passed'),
];

const verdict: readonly Column[] = [
  word('headline', 'headline', 'first criterion that failed, in the fixed order'),
  flag('passes', 'passes', 'every criterion that could be judged passes at face value'),
  word('valid', 'valid', 'yes, no or cannot_tell, with measurement uncertainty in view'),
  figure(
    'probability_valid',
    'probabilityValid',
    '1',
    1,
    'probability that every criterion that could be judged is met',
  ),
  flag(
    'borderline',
    'borderline',
    'a value lies within its uncertainty of a threshold, or a sign asks for a second look',
  ),
  figure('probability', 'probability', '1', 1, 'probability that this was a repetition at all'),
  figure('gap_ms', 'longestGapS', 'ms', 1000, 'longest stretch without samples inside the repetition'),
  flag('after_end', 'afterEnd', 'comes after the end of the test'),
];

const results = CRITERION_IDS.map((id) =>
  word(`criteria.${id}`, `criteria.${id}.result`, `result code of the criterion ${id}; not_observed is no pass`),
);

const evidence = CRITERION_IDS.flatMap((id) => {
  const key = `evidence.${id}`;
  const field = `criteria.${id}`;
  return [
    figure(`${key}.value`, `${field}.evidence.value`, '1', 1, `value that ${id} was judged on, in the unit beside it`),
    figure(`${key}.u`, `${field}.evidence.u`, '1', 1, 'standard uncertainty of the value, in the same unit'),
    figure(
      `${key}.threshold`,
      `${field}.evidence.threshold`,
      '1',
      1,
      'what the value is held against, in the same unit',
    ),
    word(`${key}.unit`, `${field}.evidence.unit`, 'UCUM code of the unit of the evidence'),
    figure(`${key}.from_s`, `${field}.evidence.fromS`, 's', 1, 'start of the span that was looked at'),
    figure(`${key}.to_s`, `${field}.evidence.toS`, 's', 1, 'end of the span that was looked at'),
    figure(`${key}.probability`, `${field}.probability`, '1', 1, 'probability that the criterion is met'),
    flag(`${key}.borderline`, `${field}.borderline`, 'within its uncertainty of the threshold, or a sign to look at'),
    word(`${key}.seen`, `${field}.seen`, 'measured, inferred, tester or not-observed'),
    word(`${key}.reason`, `${field}.reason`, 'why it was not observed'),
  ];
});

/** The figures of one repetition. Empty means not measured; zero means zero. */
export const REPETITION_COLUMNS: readonly Column[] = [
  ...place,
  ...size,
  ...tempo,
  ...work,
  ...verdict,
  ...results,
  ...evidence,
];
