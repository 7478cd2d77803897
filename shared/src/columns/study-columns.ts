import type { Column } from './column.ts';
import { columnsOf } from './column-makers.ts';

const ofPerson = columnsOf('person');
const ofVisit = columnsOf('visit');
const ofTrial = columnsOf('trial');
const ofSample = columnsOf('sample');
const ofPart = columnsOf('part');
const ofPractice = columnsOf('practice');
const ofReach = columnsOf('knee-to-wall');
const ofTotal = columnsOf('questionnaire-total');

/** Somebody who was tested. In a de-identified export the key is a study key; name, year of birth and note are empty. */
export const PERSON_COLUMNS: readonly Column[] = [
  ofPerson.word('person', 'key', 'key of the person'),
  ofPerson.word('name', 'name', 'name'),
  ofPerson.figure('birth_year', 'birthYear', 'a', 1, 'year of birth'),
  ofPerson.figure('age_years', 'ageYears', 'a', 1, 'age in whole years at the first visit; empty from 90 on'),
  ofPerson.word('age_group', 'ageGroup', '90-and-over where the age is left out for that reason'),
  ofPerson.word('sex', 'sex', 'group to look for in published groups: women or men'),
  ofPerson.figure('body_height_m', 'bodyHeightM', 'm', 1, 'height of the body'),
  ofPerson.figure('body_mass_kg', 'bodyMassKg', 'kg', 1, 'mass of the body'),
  ofPerson.figure('heel_lever_mm', 'heelLeverM', 'mm', 1000, 'ball of the foot to the sensor point at the heel'),
  ofPerson.word('note', 'note', 'what was written about the person'),
];

function legColumns(side: 'left' | 'right'): Column[] {
  const { word, flag, figure } = ofVisit;
  const of = `of the ${side} leg`;
  const irritability = `legs.${side}.irritability`;
  return [
    word(`${side}.sore`, `legs.${side}.sore`, `where the tendon ${of} is sore; empty was not asked`),
    word(`${side}.injury`, `legs.${side}.injury`, `when the latest injury ${of} was; empty was not asked`),
    flag(`${side}.injury_confirmed`, `legs.${side}.confirmed`, `a clinician confirms that it may be compared with`),
    word(`${side}.provoked_by`, `${irritability}.provokedBy`, `what brings the pain ${of} on`),
    figure(`${side}.provoked_pain`, `${irritability}.peakPain`, '1', 1, `pain at that load, 0 to 10`),
    word(`${side}.settles`, `${irritability}.settles`, `until pain ${of} is back to where it was`),
    word(`${side}.stiffness`, `${irritability}.stiffness`, `stiffness ${of} in the morning`),
    word(`${side}.rest_pain`, `${irritability}.restPain`, `pain ${of} at rest or at night`),
    word(`${side}.trend`, `${irritability}.trend`, `over the last two weeks`),
    word(`${side}.flare`, `${irritability}.flare`, `the visit fell into a flare ${of}`),
    word(`${side}.last_flare`, `legs.${side}.lastFlare`, `when the last flare ${of} was; empty was not asked`),
    figure(`${side}.pain_now`, `${irritability}.painNow`, '1', 1, `pain ${of} before the test, 0 to 10`),
  ];
}

/** A visit. In a de-identified export the time is empty and the day offset stands for it. */
export const VISIT_COLUMNS: readonly Column[] = [
  ofVisit.word('visit', 'key', 'key of the visit'),
  ofVisit.word('person', 'person', 'key of the person'),
  ofVisit.word('at', 'at', 'when it began: ISO 8601, with offset where a time of day is given'),
  ofVisit.figure('day_offset', 'dayOffset', 'd', 1, 'days since the first visit of the person'),
  ...legColumns('left'),
  ...legColumns('right'),
  ofVisit.list('about', 'about', 'what holds of the person; empty was not asked, or nothing of the list holds'),
  ofVisit.list('safety_ticked', 'safetyTicked', 'lines of the safety list that were ticked'),
  ofVisit.list('safety_overridden', 'safetyOverridden', 'those of them that a clinician went on in spite of'),
  ofVisit.word('note', 'note', 'what was written about the visit'),
];

/** The trial that a row of another table is of. */
export const TRIAL_KEY_COLUMNS: readonly Column[] = [
  ofPart.word('trial', 'key', 'key of the trial'),
  ofPart.word('person', 'person', 'key of the person'),
  ofPart.word('visit', 'visit', 'key of the visit'),
  ofPart.word('side', 'side', 'left or right'),
  ofPart.word('protocol', 'protocol', 'the rules that were judged by'),
];

/** What is told of a trial, whatever the test. */
export const TRIAL_FRAME_COLUMNS: readonly Column[] = [
  ofTrial.word('trial', 'key', 'key of the trial'),
  ofTrial.word('person', 'person', 'key of the person'),
  ofTrial.word('visit', 'visit', 'key of the visit'),
  ofTrial.word('test', 'test', 'heel-raise, isometric or hop-series'),
  ofTrial.word('side', 'side', 'left or right'),
  ofTrial.word('placement', 'placement', 'where the sensor was'),
  ofTrial.word('protocol', 'protocol', 'the rules that were judged by'),
  ofTrial.word('protocol_hash', 'protocolHash', 'SHA-256 of the protocol with its parameters'),
  ofTrial.word('settings_hash', 'settingsHash', 'SHA-256 of all settings and of the protocol with its parameters'),
  ofTrial.word('software', 'software', 'name and version of what made the result'),
  ofTrial.word('file', 'file', 'the recording, as it was named'),
  ofTrial.word('sha256', 'sha256', 'SHA-256 of the bytes that were recorded'),
  ofTrial.word('at', 'at', 'when it began: ISO 8601, with offset where a time of day is given'),
  ofTrial.word('origin', 'origin', 'what the recording was taken from: live or person, by-hand, simulated, replayed'),
  ofTrial.word('device', 'device', 'the sensor, as it names itself'),
  ofTrial.word('device_notes', 'deviceNotes', 'what the recording says about its device'),
  ofTrial.figure('force_offset', 'forceLine.offset', '1', 1, 'newtons are (sample less this) over force_slope'),
  ofTrial.figure('force_offset_u', 'forceLine.offsetU', '1', 1, 'standard uncertainty of force_offset'),
  ofTrial.figure('force_slope', 'forceLine.slope', '1', 1, 'of the calibration that forces were counted by'),
  ofTrial.figure('force_slope_u', 'forceLine.slopeU', '1', 1, 'standard uncertainty of force_slope'),
  ofTrial.list('read_as', 'readAs', 'by what samples of a quantity are multiplied, as was answered about the sensor'),
  ofTrial.figure(
    'string_rest_length_mm',
    'stringRestLengthM',
    'mm',
    1000,
    'length of the string at rest that its slant was taken off by; empty where none measured, or its length was not',
  ),
  ofTrial.word('status', 'status', 'assessed, refused, or without a result'),
  ofTrial.word('reason', 'reason', 'why it was refused'),
  ofTrial.flag('leg_renamed', 'renamed', 'named after the other leg since it was recorded; empty is not told'),
  ofTrial.flag('set_aside', 'setAside', 'taken back by the tester: kept, not counted'),
  ofTrial.word('set_aside_why', 'setAsideWhy', 'why'),
  ofTrial.word('end_reason', 'endReason', 'why it ended, as recorded by the tester'),
  ofTrial.word(
    'happened',
    'happened',
    'what ended it at once, such as pop: no score; empty where nothing did, or it is not told',
  ),
  ofTrial.figure('exertion', 'exertion', '1', 1, 'exertion at the end, 0 to 10'),
  ofTrial.figure('pain_before', 'painBefore', '1', 1, 'pain before, 0 to 10'),
  ofTrial.figure('pain_peak', 'painPeak', '1', 1, 'greatest pain during it, 0 to 10'),
  ofTrial.flag('pain_sharp', 'painSharp', 'the pain was sharp or tearing'),
  ofTrial.figure('rest_s', 'restS', 's', 1, 'rest since the other leg'),
  ofTrial.word('footwear', 'footwear', 'what was worn'),
  ofTrial.word('support', 'support', 'what the hands held'),
  ofTrial.word('note', 'note', 'what was written about the trial'),
];

/** A set that was counted again by other criteria; the result of its trial stays the one that counts. */
export const RECOUNT_COLUMNS: readonly Column[] = [
  ofPart.word('recount', 'key', 'key of the re-count'),
  ofPart.word('recounted_at', 'at', 'when it was counted again: ISO 8601, with offset'),
  ofPart.word('recount_protocol', 'protocol', 'the rules that it was judged by this time'),
  ofPart.word('protocol_hash', 'protocolHash', 'SHA-256 of that protocol with its parameters'),
  ofPart.word('settings_hash', 'settingsHash', 'SHA-256 of all settings and of that protocol with its parameters'),
  ofPart.word('software', 'software', 'name and version of what made the re-count'),
  ofPart.word('why', 'why', 'why it was counted again, as it was written'),
];

/** A total of a questionnaire. In a de-identified export the day is empty and the day offset stands for it. */
export const TOTAL_COLUMNS: readonly Column[] = [
  ofTotal.word('total', 'key', 'key of the entry'),
  ofTotal.word('person', 'person', 'key of the person'),
  ofTotal.word('on', 'at', 'the day that it is of'),
  ofTotal.figure('day_offset', 'dayOffset', 'd', 1, 'days since the first visit of the person'),
  ofTotal.word('questionnaire', 'questionnaire', 'code of the questionnaire, such as visa-a'),
  ofTotal.word('language_version', 'languageVersion', 'language version that was filled in'),
  ofTotal.word('side', 'side', 'left or right; empty where it is about no single leg'),
  ofTotal.figure('points', 'total', '1', 1, 'total; nothing is known of its items'),
];

/** A knee-to-wall test of a leg. In a de-identified export the day is empty and the day offset stands for it. */
export const REACH_COLUMNS: readonly Column[] = [
  ofReach.word('test', 'key', 'key of the entry'),
  ofReach.word('person', 'person', 'key of the person'),
  ofReach.word('on', 'at', 'the day that it is of'),
  ofReach.figure('day_offset', 'dayOffset', 'd', 1, 'days since the first visit of the person'),
  ofReach.word('side', 'side', 'left or right'),
  ofReach.word(
    'reach_unit',
    'unit',
    'cm from the toe to the wall, or deg of the shank from the upright: of the trials and the best',
  ),
  ...[0, 1, 2].map((at) =>
    ofReach.figure(`trial_${at + 1}`, `trials.${at}`, '1', 1, `trial ${at + 1}; empty where it was not taken`),
  ),
  ofReach.figure('best', 'best', '1', 1, 'best of the trials; empty where the test was left out'),
  ofReach.figure('pain', 'pain', '1', 1, 'worst pain in it, 0 to 10'),
  ofReach.word('skipped', 'skipped', 'why it was left out; empty where it was done'),
];

/** A raise for practice before a set. In a de-identified export the time is empty. */
export const PRACTICE_COLUMNS: readonly Column[] = [
  ofPractice.word('practice', 'key', 'key of the practice'),
  ofPractice.word('person', 'person', 'key of the person'),
  ofPractice.word('visit', 'visit', 'key of the visit'),
  ofPractice.word('at', 'at', 'when it began: ISO 8601, with offset'),
  ofPractice.word('side', 'side', 'left or right'),
  ofPractice.word('placement', 'placement', 'where the sensor was'),
  ofPractice.word('protocol', 'protocol', 'the rules of the set that it was for'),
  ofPractice.word('origin', 'origin', 'what it was taken from: live, or simulated'),
  ofPractice.flag(
    'stopped',
    'stopped',
    'false where the page was closed or left before its end: no height is known then',
  ),
  ofPractice.figure('raise', 'raise', '1', 1, 'number of the raise, from 1; empty where no height is known'),
  ofPractice.figure(
    'height_mm',
    'heightM',
    'mm',
    1000,
    'height of the heel, or rise of the body where the sensor sees that, as it was found when it stopped',
  ),
  ofPractice.figure('height_u_mm', 'heightUM', 'mm', 1000, 'standard uncertainty of height_mm'),
  ofPractice.list(
    'reference_of',
    'trials',
    'trials whose reference height is the mean of the best two raises of this practice; empty where it is that of none',
  ),
];

/** The samples of a trial in SI on their own times, one row for each instant. */
export const SAMPLE_COLUMNS: readonly Column[] = [
  ofSample.word('trial', 'trial', 'key of the trial'),
  ofSample.figure('clock', 'clock', '1', 1, 'number of the clock that the times are of, from 1'),
  ofSample.figure('time_s', 'timeS', 's', 1, 'time of the sample on the clock of the recording'),
  ofSample.figure('force_n', 'force', 'N', 1, 'force'),
  ofSample.figure('torque_nm', 'torque', 'N.m', 1, 'torque'),
  ofSample.figure('heel_height_m', 'heel-height', 'm', 1, 'displacement of the heel'),
  ofSample.figure('angle_rad', 'angle', 'rad', 1, 'angle'),
  ofSample.figure(
    'tap',
    'tap',
    '1',
    1,
    'change of a count by hand: 1 a tap, -1 the last one taken back, 0 begin or end',
  ),
  ...(['x', 'y', 'z'] as const).map((axis) =>
    ofSample.figure(`torque_${axis}_nm`, `torque.${axis}`, 'N.m', 1, `torque about ${axis}`),
  ),
  ...(['x', 'y', 'z'] as const).map((axis) =>
    ofSample.figure(`angle_${axis}_rad`, `angle.${axis}`, 'rad', 1, `angle about ${axis}`),
  ),
  ...(['x', 'y', 'z'] as const).map((axis) =>
    ofSample.figure(`acc_${axis}_m_per_s2`, `acceleration.${axis}`, 'm/s2', 1, `specific force along ${axis}`),
  ),
  ...(['x', 'y', 'z'] as const).map((axis) =>
    ofSample.figure(`gyro_${axis}_rad_per_s`, `angular-velocity.${axis}`, 'rad/s', 1, `rate of turn about ${axis}`),
  ),
];
