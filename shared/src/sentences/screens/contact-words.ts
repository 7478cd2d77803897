import { sentences } from '../sentence.ts';

/** Words of the setting that says whom somebody who was tested rings. */
export const CONTACT_WORDS = sentences('screen.contact', {
  title: 'Whom your patients ring',
  explain: 'It stands first on every page for a patient, with the red flags. Nothing is filled in for you.',
  name: 'Name of the place',
  telephone: 'Telephone',
  keep: 'Keep',
  kept: 'On the pages for patients: {name}, {telephone}.',
  none: 'Nothing is kept yet: the pages speak of the number that your clinic gave.',
  wrong: 'A name, and a number of at least three digits.',
  'not-kept': 'This could not be kept on the device. Try again.',
});
