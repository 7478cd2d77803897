import { sentences } from '../sentence.ts';

/** Words of the plan as a file for a calendar: short, plain, without a name and without what is the matter. */
export const CALENDAR_WORDS = sentences('screen.calendar', {
  save: 'Save the plan as a calendar file',
  explain:
    'The file puts each day of the plan into a calendar, as a day and at no hour. It holds no name. A file of a newer plan takes the place of this one.',
  'left-out': 'Not in the file, as no days are set for it: {what}.',
  'not-known': 'The calendar does not know if the plan is changed or stopped. Then do as you were told.',
  'goes-on': 'This does not end the visit.',
  open: 'A part of the plan has no end. It stands in the file for {days} days. Save it again then.',
  'no-load': 'No exercise and no run is in the file.',
  'not-made': 'The file could not be made. Try it once more.',

  morning: 'Morning: first steps',
  'morning-how': 'Note how the first steps felt, on your page.',
  title: '{what}: {legs}',
  'run-title': '{what}, {most}',
  care: 'More pain than agreed, or something new? Stop for today and ask who treats you.',
  gone: 'No longer in the plan',
});
