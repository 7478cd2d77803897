import { sentences } from '../sentence.ts';

/** Words of a study: the way into it, its parts, and how it is assessed. */
export const STUDY_WORDS = sentences('screen.study', {
  title: 'Studies',
  explain:
    'A study file says what is to be found out before the recordings are looked at. Its recordings are read and assessed here, and nothing is sent.',
  parts: 'Parts of the study',
  'part-quality': 'Quality',
  'part-recount': 'Count again',
  'part-choices': 'Choices',
  'part-groups': 'Comparison',
  loading: 'Opening the study.',
  lost: 'There is no such study here.',
  back: 'All studies',
});
