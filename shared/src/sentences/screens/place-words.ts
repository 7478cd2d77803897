import { sentences } from '../sentence.ts';

// What each page is called, and what leads there: known before the page itself is.

/** The clinic: its lock, its keys, its backups. */
export const CLINIC_PLACE = sentences('screen.clinic', {
  title: 'This clinic',
  link: 'Clinic: lock and backup',
});

/** Everything of one person on one line of time. */
export const COURSE_PLACE = sentences('screen.course', {
  title: 'Course',
  link: 'Course',
  'link-of': 'Course: {name}',
});

/** Erasing a person. */
export const ERASE_PLACE = sentences('screen.erase', {
  title: 'Erase a person',
  link: 'Erase this person',
  'link-of': 'Erase {name}',
});

/** A table that another program wrote. */
export const IMPORT_PLACE = sentences('screen.import', {
  title: 'A file from another program',
  link: 'Read a file from another program',
});

/** Errors of measurement of the clinic's own. */
export const OWN_ERROR_PLACE = sentences('screen.own-error', {
  title: 'Errors of measurement of this clinic',
  link: 'Errors of measurement of this clinic',
});

/** The sensors. */
export const SENSOR_PLACE = sentences('screen.sensor', {
  title: 'Sensors',
  link: 'Sensors',
});

/** The rules that proposals come from. */
export const RULES_PLACE = sentences('screen.rules', {
  title: 'Rules of this clinic',
  link: 'Rules that proposals come from',
});

/** What somebody is shown of a visit of theirs. */
export const LEGS_PLACE = sentences('screen.legs', {
  title: 'My two legs',
});

/** The description of a sensor. */
export const DESCRIBE_PLACE = sentences('screen.describe', {
  title: 'Describe a sensor',
});

/** Who opened, changed or removed what. */
export const AUDIT_PLACE = sentences('screen.audit', {
  title: 'Who did what',
});

/** Mornings that somebody gives back. */
export const MORNINGS_IN_PLACE = sentences('screen.mornings-in', {
  title: 'What comes from home',
  link: 'Take in what comes from home',
});

/** One page about a visit for the record. */
export const REPORT_PLACE = sentences('screen.report', {
  title: 'Calf strength: report for the record',
  link: 'Report for the record',
});
