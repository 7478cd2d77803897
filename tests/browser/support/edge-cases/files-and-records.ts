import type { EdgeCase } from './edge-case.ts';

const survey = 'records/guess/survey';

/** Files of other programs, what is written down at home, and the store. */
export const FILES_AND_RECORDS = {
  'decimal-comma': {
    happens: 'a table has decimal commas and semicolons',
    seen: 'found by consistency, with its first rows; 1,234 is asked about',
    metBy: [
      [survey, 'are found by consistency, and the first rows are shown as they are read'],
      [survey, 'a number such as 1,234 that can be either is asked, and both answers are followed'],
      [
        'browser/import',
        'a file that nobody described is looked at, asked about, read, kept as a recipe and taken into a visit',
      ],
    ],
  },
  'clock-over-midnight': {
    happens: 'times are the text of a clock and go over midnight',
    seen: 'they go on, keep their offset, and it is said',
    metBy: [[survey, 'go on over midnight, keep their offset, and it is said']],
  },
  'header-in-mid-file': {
    happens: 'a header comes again, with a footer, blank lines and NaN',
    seen: 'passed over, counted and listed by line',
    metBy: [[survey, 'are tolerated, counted and listed by line; a missing value is a gap and never zero']],
  },
  'other-encodings': {
    happens: 'a file is in UTF-16, Latin-1 or has a byte order mark',
    seen: 'names come as they were written',
    metBy: [[survey, '%s is %s, with every letter of its names']],
  },
  'two-people-in-one-file': {
    happens: 'a file holds two people',
    seen: 'found by a column or a pause, and one has to be named',
    metBy: [
      [survey, 'are found by the column of codes, and a part has to be named'],
      [survey, 'are found by a pause of more than a minute'],
    ],
  },
  'left-and-right-in-one-file': {
    happens: 'a file holds both legs',
    seen: 'both are mapped; which is which is asked; the order is not known, so no ratio',
    metBy: [
      [survey, 'which is which is asked where the names do not tell, and answered by column'],
      ['dashboard/live/handed-recording', 'of both legs the one that is tested is played'],
    ],
  },
  'rate-unknown': {
    happens: 'samples are numbered and nobody told the rate',
    seen: 'the rate is asked, and nothing hangs on time before',
    metBy: [
      [survey, 'the rate is asked; what hangs on time is null until it is told'],
      ['dashboard/import/typed-rate', 'a rate is a number from 10 to 2000, by point or comma'],
    ],
  },
  'an-hour-long': {
    happens: 'a file of an hour holds the test',
    seen: 'a stretch is proposed, and nothing is read before one was named',
    metBy: [[survey, 'a stretch is proposed, and nothing is read before one was named']],
  },
  'sore-next-day': {
    happens: 'the next morning tells 7 of 10',
    seen: 'a flare above the list of people; at home the more careful line, if it was confirmed',
    metBy: [
      ['casebook/today/due-today', 'is pain in the morning more than 2 over the usual, and not 2'],
      [
        'dashboard/home/morning-line',
        'pain up to one more than usual is steady, two more is held, above that it is eased',
      ],
    ],
  },
  'no-morning-told': {
    happens: 'nobody told of the morning',
    seen: 'a gap, never a zero',
    metBy: [
      ['dashboard/course/mornings', 'a day without an entry, and a pain that was not told, are gaps and no zeros'],
    ],
  },
  'written-twice': {
    happens: 'something is written down twice, or of a day to come',
    seen: 'it is asked about; the day is the one of the place',
    metBy: [
      [
        'dashboard/course/log-questions',
        'a day to come, one before the first visit, and a second morning of a day are asked about',
      ],
      [
        'dashboard/home/taken-mornings',
        'a new day is new, the same answers are there, other answers and a day to come are asked about',
      ],
    ],
  },
  'no-room': {
    happens: 'the store is full',
    seen: 'said in the set; it is held, tried again, or saved as a file',
    metBy: [
      ['browser/kept-sets', 'a set that cannot be stored is held, said, tried again and stored'],
      ['dashboard/clinic/storage-promise', 'what the browser says of keeping is told, before and after it was asked'],
    ],
  },
  'two-windows': {
    happens: 'the same clinic is open in two windows',
    seen: 'the second one reads and says so',
    metBy: [
      ['storage/writer-lock', 'one writes, the other reads, is told so, and writes once the first is closed'],
      ['browser/clinic', 'a clinic of its own is made, locked, opened, backed up, restored, and a person erased'],
    ],
  },
  'person-erased': {
    happens: 'a person is erased',
    seen: 'a receipt of counts; nothing of the person is left',
    metBy: [
      ['dashboard/clinic/erase-receipt', 'a receipt holds counts, time and author, and no name of a person'],
      ['storage/keys/vault', 'forgets the key of a person who was erased: what a disk still holds opens no more'],
    ],
  },
  'damaged-record': {
    happens: 'what is stored is damaged or cut off',
    seen: 'what is whole is there, what is not is listed',
    metBy: [
      ['casebook/kinds/read-body', 'one that does not fit never hides the rest'],
      ['dashboard/live/kept-set', 'a block that was cut off in the middle is left out, and the rest counts'],
      ['dashboard/clinic/record-check', 'what cannot be read is a line, with what was expected where'],
    ],
  },
  'seen-otherwise': {
    happens: 'somebody sees no colours, sees little, or reads with the ear',
    seen: 'shapes and words with every colour, a table with every chart, verdicts spoken',
    metBy: [
      [
        'browser/accessibility',
        'no page or state breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
      ],
      ['dashboard/charts/table-twin', 'ten seconds in ten rows: least and greatest of each second, and its marks'],
      ['dashboard/legs/picture', 'the legs differ in their shape, whatever the colour'],
    ],
  },
  'read-from-the-right': {
    happens: 'the language is long, or is read from the right',
    seen: 'every page holds it; the left leg stays on the left',
    metBy: [
      [
        'browser/languages',
        'in longer words that are read from the right no sentence is missing in the catalogue, every page holds it, and the legs are not mirrored',
      ],
    ],
  },
} as const satisfies Record<string, EdgeCase>;
