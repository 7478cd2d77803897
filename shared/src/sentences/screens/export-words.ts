import { sentences } from '../sentence.ts';

/** Words of the page that hands records over. */
export const EXPORT_WORDS = sentences('screen.export', {
  title: 'Hand records over',
  explain:
    'Everything can leave in open formats: one file, made on this device, that you save and hand on yourself. Nothing is sent anywhere. The same record gives the same file on the command line.',
  whose: 'Whose',
  everybody: 'everybody in this clinic',
  which: 'Which visits',
  'all-visits': 'all visits',
  'visit-of': 'the visit of {day}',
  forms: 'Tables as',
  csv: 'comma-separated text, for any spreadsheet',
  'json-lines': 'lines of JSON',
  parquet: 'Parquet, for large studies',
  more: 'With them',
  samples: 'the samples of every recording',
  raw: 'the bytes as they were recorded',
  'health-records': 'a record of each person in FHIR R4',
  letters: 'a letter about each visit',
  names: 'Names',
  'without-names': 'take out names, dates and free text',
  'keep-devices': 'leave the names of sensors in',
  named:
    'People are named in this file. Local rules on health data hold for every copy of it: ask whether everybody in it agreed.',
  unnamed:
    'Study keys stand for names, days since the first visit for dates, and age for the year of birth, from 90 on as one group. The keys are drawn anew each time. Free text, hashes and bytes as they were recorded stay out. Somebody who knows the figures of a person can still find them: local rules hold.',
  content: 'What is in it',
  counts: 'People: {people}. Visits: {visits}. Trials: {trials}.',
  table: 'Table',
  rows: 'Rows',
  columns: 'Columns',
  nothing: 'Nobody is in it yet.',
  'no-form': 'Choose one form of tables at least.',
  save: 'Make the file and save it',
  working: 'Making the file: {done} of {of} recordings.',
  packing: 'Making the file …',
  stop: 'Stop making the file',
  stopped: 'Stopped. Nothing was saved, and the record is as it was.',
  saved: 'Saved as {file}, {size} kB in {count} parts.',
  'taken-out':
    'Taken out: {names} names, {times} dates and years of birth, {texts} free texts, {hashes} hashes, {devices} names of sensors, {strangeCodes} words that are no code.',
  failed: 'The file could not be made: {reason}. Nothing was saved, and the record is as it was.',
});
