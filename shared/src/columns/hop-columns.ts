import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';

const ofHop = columnsOf('hop');
const ofSeries = columnsOf('hops');

/** Measures of hops: key, field, unit, factor, what it is. */
const MEASURES = [
  ['contact', 'contactS', 'ms', 1000, 'time on the ground before the flight'],
  ['flight', 'flightS', 'ms', 1000, 'time in the air'],
  ['period', 'periodS', 'ms', 1000, 'touching down to touching down again'],
  ['height', 'heightM', 'mm', 1000, 'height of the hop by its time in the air'],
  ['ratio', 'ratio', '1', 1, 'time in the air over time on the ground'],
  ['stiffness', 'stiffnessNpm', 'N/m', 1, 'stiffness of the leg by the spring-mass timing model'],
] as const;

function suffix(unit: string): string {
  return unit === '1' ? '' : `_${unit.toLowerCase().replace('/', '_per_')}`;
}

/** The figures of one hop. Empty means not measured; zero means zero. */
export const HOP_COLUMNS: readonly Column[] = [
  ofHop.figure('index', 'index', '1', 1, 'number of the hop in the series, from 1'),
  ofHop.figure('land_s', 'landS', 's', 1, 'touching down before the hop, on the clock of the recording'),
  ofHop.figure('take_off_s', 'takeOffS', 's', 1, 'taking off'),
  ofHop.figure('lands_again_s', 'landsAgainS', 's', 1, 'touching down after the hop'),
  ...MEASURES.flatMap(([key, field, unit, factor, description]) => [
    ofHop.figure(`${key}${suffix(unit)}`, `${field}.value`, unit, factor, description),
    ofHop.figure(`${key}_u${suffix(unit)}`, `${field}.u`, unit, factor, `standard uncertainty of ${key}`),
  ]),
  ofHop.flag('analysed', 'analysed', 'one of the hops that means and drift are taken from'),
  ofHop.word('reason', 'reason', 'why the hop has no contact time, or no times'),
];

/** The figures of one hop series, without its lists. Empty means not measured; zero means zero. */
export const HOP_SERIES_COLUMNS: readonly Column[] = [
  ofSeries.word('found', 'found', 'whether there is a hop series: yes, no or cannot_tell'),
  ofSeries.word('reason', 'reason', 'why there is none, or why that cannot be told'),
  ofSeries.figure('sample_rate_hz', 'sampleRateHz', 'Hz', 1, 'samples a second'),
  ofSeries.figure('count.hops', 'count.hops', '1', 1, 'hops found'),
  ofSeries.figure('count.low', 'count.low', '1', 1, 'lower bound of the count'),
  ofSeries.figure('count.high', 'count.high', '1', 1, 'upper bound of the count: a gap may hide hops'),
  ofSeries.figure('count.analysed', 'count.analysed', '1', 1, 'hops that means and drift are taken from'),
  ofSeries.word('count.complete', 'count.complete', 'as many hops as the protocol asks for: yes, no or cannot_tell'),
  ...MEASURES.flatMap(([key, field, unit, factor, description]) => {
    const at = `measures.${field}`;
    const end = suffix(unit);
    return [
      ofSeries.figure(`measures.${key}${end}`, `${at}.mean.value`, unit, factor, `mean: ${description}`),
      ofSeries.figure(`measures.${key}_u${end}`, `${at}.mean.u`, unit, factor, `standard uncertainty of ${key}`),
      ofSeries.figure(`measures.${key}_sd${end}`, `${at}.mean.sd`, unit, factor, 'standard deviation between hops'),
      ofSeries.figure(`measures.${key}_per_hop${end}`, `${at}.perHop.value`, unit, factor, `change of ${key} per hop`),
      ofSeries.figure(`measures.${key}_per_hop_low${end}`, `${at}.perHop.low`, unit, factor, 'its lower 95 % bound'),
      ofSeries.figure(`measures.${key}_per_hop_high${end}`, `${at}.perHop.high`, unit, factor, 'its upper 95 % bound'),
    ];
  }),
  ofSeries.figure('body_weight_n', 'bodyWeightN.value', 'N', 1, 'weight of the body by the hops, on a platform'),
  ofSeries.figure('body_weight_u_n', 'bodyWeightN.u', 'N', 1, 'standard uncertainty of body_weight_n'),
  ofSeries.figure('mass_kg', 'massKg.value', 'kg', 1, 'mass that the stiffness was taken with'),
  ofSeries.figure('zero_n', 'zeroN', 'N', 1, 'reading of the empty platform'),
  ofSeries.word('entry.met', 'entry.met', 'whether the conditions before hops were met: yes, no or cannot_tell'),
  ofSeries.word('end.reason_given', 'end.reasonGiven', 'why the test ended, as recorded by the tester'),
  ofSeries.word('end.class', 'end.class', 'capacity, tolerance, incomplete, censored, probe or unknown'),
];
