import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';
import { FORCE_UNITS, type ForceUnit, IMPULSE_SPAN, RATE_SPANS, REACHED_SHARES } from './force-units.ts';

const { figure, word, list, flag } = columnsOf('effort');

const place: readonly Column[] = [
  figure('index', 'index', '1', 1, 'number of the effort in the recording, from 1'),
  word('kind', 'kind', 'how it was made: ramp or fast'),
  figure('onset_s', 'onsetS.value', 's', 1, 'beginning of the effort, on the clock of the recording'),
  figure('onset_u_s', 'onsetS.u', 's', 1, 'standard uncertainty of the onset'),
  word(
    'start_distinct',
    'start.distinct',
    'whether a fast effort starts distinctly: yes, no or cannot_tell; empty for a ramp',
  ),
  figure('end_s', 'endS.value', 's', 1, 'back at the load at rest'),
  figure('end_u_s', 'endS.u', 's', 1, 'standard uncertainty of the end'),
  figure('peak_at_s', 'peakS', 's', 1, 'instant of the greatest force or torque'),
  figure('time_to_peak_s', 'timeToPeakS.value', 's', 1, 'onset to the greatest force or torque'),
  figure('time_to_peak_u_s', 'timeToPeakS.u', 's', 1, 'standard uncertainty of time_to_peak_s'),
  ...REACHED_SHARES.flatMap(({ key, percent }) => [
    figure(
      `time_to_${key}_s`,
      `reached.${key}.value`,
      's',
      1,
      `onset to ${percent} % of the peak; empty with the reason in early_rise_reason`,
    ),
    figure(`time_to_${key}_u_s`, `reached.${key}.u`, 's', 1, `standard uncertainty of time_to_${key}_s`),
  ]),
  figure('plateau_s', 'plateauS.value', 's', 1, 'time within the share of the peak that the protocol calls a plateau'),
  figure('plateau_u_s', 'plateauS.u', 's', 1, 'standard uncertainty of plateau_s'),
  figure('unsteadiness', 'unsteadiness.value', '1', 1, 'standard deviation over mean on the plateau, slow course off'),
  figure('unsteadiness_u', 'unsteadiness.u', '1', 1, 'standard uncertainty of unsteadiness'),
];

/** Figures in one unit; those of the other unit are empty, because a torque is never turned into a force here, nor back. */
function inUnit({ suffix, field, unit, of, impulse, rate }: ForceUnit): Column[] {
  const both = (key: string, path: string, description: string): Column[] => [
    figure(`${key}_${suffix}`, `${field}.${path}.value`, unit, 1, `${description}; ${of} only`),
    figure(`${key}_u_${suffix}`, `${field}.${path}.u`, unit, 1, `standard uncertainty of ${key}_${suffix}`),
  ];
  return [
    ...both('peak', 'peak.net', 'greatest value above the load at rest (net), low-passed'),
    ...both('peak_gross', 'peak.gross', 'the same as the sensor reads it, load at rest included'),
    ...both(
      'mean_500ms',
      'mean500ms.net',
      'greatest mean over 500 ms, net; empty where the protocol scores another window',
    ),
    ...both('mean_500ms_gross', 'mean500ms.gross', 'the same, load at rest included'),
    ...both('rest', 'rest', 'load at rest at the time of the peak'),
    figure(`impulse_${suffix}_s`, `${field}.impulse.value`, impulse, 1, `area above the load at rest; ${of} only`),
    figure(`impulse_u_${suffix}_s`, `${field}.impulse.u`, impulse, 1, `standard uncertainty of impulse_${suffix}_s`),
    figure(
      `impulse_${IMPULSE_SPAN.key}_${suffix}_s`,
      `${field}.earlyImpulse.value`,
      impulse,
      1,
      `area above the load at rest over the first ${IMPULSE_SPAN.toMs} ms; empty with the reason in early_rise_reason; ${of} only`,
    ),
    figure(
      `impulse_${IMPULSE_SPAN.key}_u_${suffix}_s`,
      `${field}.earlyImpulse.u`,
      impulse,
      1,
      `standard uncertainty of impulse_${IMPULSE_SPAN.key}_${suffix}_s`,
    ),
    ...RATE_SPANS.flatMap(({ key, toMs }) => [
      figure(
        `rfd_${key}_${suffix}_per_s`,
        `${field}.rates.${key}.value`,
        rate,
        1,
        `mean rate of rise over the first ${toMs} ms; empty with the reason in rfd_${key}_reason; ${of} only`,
      ),
      figure(
        `rfd_${key}_u_${suffix}_per_s`,
        `${field}.rates.${key}.u`,
        rate,
        1,
        `standard uncertainty of rfd_${key}_${suffix}_per_s`,
      ),
    ]),
  ];
}

const verdict: readonly Column[] = [
  ...RATE_SPANS.map(({ key }) =>
    word(`rfd_${key}_reason`, `noRate.${key}`, `why there is no rate of rise over this span; empty where there is one`),
  ),
  word(
    'early_rise_reason',
    'early.reason',
    'why there are no impulse over the first 200 ms and no times to 30 and 50 % of the peak; empty where there are',
  ),
  flag('rfd_coarse', 'coarse', 'the sampling rate allows coarse rates of rise only'),
  word('accepted', 'accepted', 'whether the effort counts: yes, no or cannot_tell'),
  list('reasons', 'reasons', 'criteria that are not met, in their fixed order'),
  list('undecided', 'undecided', 'criteria of which nobody can tell'),
];

/** The figures of one isometric effort. Empty means not measured; zero means zero. */
export const EFFORT_COLUMNS: readonly Column[] = [...place, ...FORCE_UNITS.flatMap(inUnit), ...verdict];
