import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';

const legs = columnsOf('legs');
const leg = columnsOf('leg');
const change = columnsOf('change');

type Makers = ReturnType<typeof columnsOf>;

/** The error of measurement that a verdict rests on, with its source. */
function reliability({ figure, word }: Makers): Column[] {
  return [
    word('reliability.id', 'reliability.id', 'error of measurement that the verdict rests on'),
    word('reliability.kind', 'reliability.kind', 'own-clinic, published or cautious-default'),
    word(
      'reliability.scale',
      'reliability.scale',
      'natural: in the unit of the values; log: of the logarithm, a share',
    ),
    figure(
      'reliability.standard_error',
      'reliability.standardError',
      '1',
      1,
      'standard error, in the unit of the values',
    ),
    word('reliability.source', 'reliability.citation', 'who says so'),
    word('reliability.group', 'reliability.group', 'whom it was measured on'),
    figure('reliability.people', 'reliability.people', '1', 1, 'how many people it was measured on'),
  ];
}

/** Which visit of whom, and whether its legs are set into a ratio. */
export const LEGS_COLUMNS: readonly Column[] = [
  legs.word('person', 'person', 'as it stood in the manifest'),
  legs.word('visit', 'visit', 'as it stood in the manifest'),
  legs.word('test', 'test', 'which test'),
  legs.word('left_file', 'leftFile', 'recording of the left leg'),
  legs.word('right_file', 'rightFile', 'recording of the right leg'),
  legs.word('kind', 'kind', 'ratio, or blocked: then no figure is given'),
];

/** The ratio of the legs, where nothing stands against it; empty where anything does. */
export const RATIO_COLUMNS: readonly Column[] = [
  legs.word('over', 'over', 'the leg above the line of the fraction'),
  legs.word('under', 'under', 'the leg below it'),
  legs.word('why_over', 'whyOver', 'sore-over-other, or left-over-right where neither is sore'),
  legs.figure('ratio.value', 'ratio.value', '1', 1, 'leg above the line over leg below it'),
  legs.figure('ratio.low', 'ratio.low', '1', 1, 'lower 95 % bound of the ratio'),
  legs.figure('ratio.high', 'ratio.high', '1', 1, 'upper 95 % bound of the ratio'),
  legs.word(
    'ratio_error.from',
    'ratioError.from',
    'what the interval of the ratio rests on: own-ratios, or sides-independent, the errors of both legs',
  ),
  legs.word(
    'ratio_error.own',
    'ratioError.own',
    'what became of own repeated ratios: used, used-with-margin, too-few-pairs or none',
  ),
  legs.figure('ratio_error.pairs', 'ratioError.pairs', '1', 1, 'pairs of visits behind own repeated ratios'),
  legs.figure('ratio_error.log_u', 'ratioError.logU', '1', 1, 'standard error of the logarithm of the ratio'),
  legs.word(
    'ratio_error.scale',
    'scale',
    'errors of calibrations: shared (one for both, so that it cancels in the ratio), apart (both count), not-known, or none',
  ),
  legs.figure('line', 'line', '1', 1, 'ratio under which a leg counts as lower; a choice, and no pass mark'),
  legs.figure('probability_below', 'probability', '1', 1, 'probability that the true ratio lies under the line'),
  legs.word('lower', 'lower', 'whether the leg above the line is lower: yes, no or cannot_tell'),
  legs.figure(
    'difference.value',
    'difference.value',
    '1',
    1,
    'leg above the line minus the other, in the unit beside it',
  ),
  legs.figure('difference.low', 'difference.low', '1', 1, 'lower 95 % bound of the difference'),
  legs.figure('difference.high', 'difference.high', '1', 1, 'upper 95 % bound of the difference'),
  legs.word('difference.unit', 'unit', 'UCUM code of the unit of the difference; 1 for repetitions'),
  legs.word('difference.zone', 'zone', 'likely-real, possible or cannot-tell, against the usual wobble'),
  ...reliability(legs),
  legs.flag('hangs_on_reliability', 'hangs', 'the answer is another one by some other published error'),
];

/** What one set says by itself. */
export const LEG_COLUMNS: readonly Column[] = [
  leg.word('person', 'person', 'as it stood in the manifest'),
  leg.word('visit', 'visit', 'as it stood in the manifest'),
  leg.word('side', 'side', 'left or right'),
  leg.word('file', 'file', 'the recording'),
  leg.word('protocol', 'protocol', 'the rules that repetitions were judged by'),
  leg.figure('value', 'value', '1', 1, 'what is compared, in the unit beside it'),
  leg.figure('value_u', 'valueU', '1', 1, 'its standard uncertainty from one test to the next'),
  leg.word('unit', 'unit', 'UCUM code of the unit; 1 for repetitions'),
  leg.word('convention', 'convention', 'what the value is of'),
  ...reliability(leg),
  leg.word('not_interpreted', 'notInterpreted', 'codes of why the set does not show what the calf can do'),
  leg.word('effort.good', 'effort.good', 'whether the effort shows capacity: yes, no or cannot_tell'),
  leg.word('effort.reason', 'effort.reason', 'why'),
  leg.word('effort.used', 'effort.used', 'what the answer rests on'),
  leg.word('effort.missing', 'effort.missing', 'what was not known'),
  leg.word(
    'pain.shows',
    'pain.shows',
    'what the count stands for: capacity, tolerated, lower-bound, neither or not-known',
  ),
  leg.figure(
    'pain.tolerated',
    'pain.tolerated',
    '1',
    1,
    'repetitions before the pain limit; empty where pain did not end it',
  ),
  leg.word('pain.within_limit', 'pain.withinLimit', 'pain within its limit and not sharp: yes, no or cannot_tell'),
  leg.word('pain.rise_within', 'pain.riseWithin', 'rise over the pain before within its limit: yes, no or cannot_tell'),
  leg.figure('pain.limit', 'pain.limit', '1', 1, 'limit that was held against, of 10'),
  leg.word('pain.used', 'pain.used', 'what the answers rest on'),
  leg.word('pain.missing', 'pain.missing', 'what was not known'),
  leg.word('irritability.grade', 'irritability.grade', 'low, moderate or high; empty is not graded'),
  leg.word('irritability.treat_as', 'irritability.treatAs', 'grade that limits are chosen by'),
  leg.word('irritability.decided_by', 'irritability.decidedBy', 'inputs that reach that grade'),
  leg.word('irritability.used', 'irritability.used', 'what the grade rests on'),
  leg.word('irritability.missing', 'irritability.missing', 'what was not known'),
  leg.word('no_reference', 'noReference', 'codes of why no published group stands beside it'),
];

/** One leg over its visits: a change since an earlier one, or the course of all. */
export const CHANGE_COLUMNS: readonly Column[] = [
  change.word('person', 'person', 'as it stood in the manifest'),
  change.word('side', 'side', 'left or right'),
  change.word('test', 'test', 'which test'),
  change.word('since', 'since', 'visit-before, first-visit, or all-visits for the course'),
  change.word('from_visit', 'fromVisit', 'the earlier visit'),
  change.word('to_visit', 'toVisit', 'the later visit'),
  change.figure('from_value', 'fromValue', '1', 1, 'result of the earlier visit'),
  change.figure('to_value', 'toValue', '1', 1, 'result of the later visit'),
  change.word('unit', 'unit', 'UCUM code of the unit of the values; 1 for repetitions'),
  change.word('kind', 'kind', 'change, trend, or side-by-side: then nothing is subtracted'),
  change.figure('change.value', 'change.value', '1', 1, 'later minus earlier'),
  change.figure('change.low', 'change.low', '1', 1, 'lower 95 % bound of the change'),
  change.figure('change.high', 'change.high', '1', 1, 'upper 95 % bound of the change'),
  change.figure('detectable.at_95', 'detectable.at95', '1', 1, 'change detectable at 95 %; no measure of importance'),
  change.figure('detectable.at_80', 'detectable.at80', '1', 1, 'change detectable at 80 %'),
  change.word('zone', 'zone', 'likely-real, possible or cannot-tell'),
  change.word('real', 'real', 'whether there is a real change: yes or cannot_tell; a small one never proves none'),
  ...reliability(change),
  change.word(
    'scale',
    'scale',
    'errors of calibrations: shared (one for both visits, a share of the change), apart (both count), not-known, or none',
  ),
  change.flag('hangs_on_reliability', 'hangs', 'the zone is another one by some other published error'),
  change.figure('slope_per_week.value', 'slope.value', '1', 1, 'robust slope over all visits, a week'),
  change.figure('slope_per_week.low', 'slope.low', '1', 1, 'lower 95 % bound; empty under five visits'),
  change.figure('slope_per_week.high', 'slope.high', '1', 1, 'upper 95 % bound; empty under five visits'),
  change.word('moves', 'moves', 'whether the course has a direction: yes or cannot_tell'),
  change.word('not_subtracted', 'notSubtracted', 'codes of why nothing is subtracted'),
  change.word('differences', 'differences', 'how the tests differ, feature by feature'),
];
