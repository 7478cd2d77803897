import { sentences } from '../sentence.ts';

/** How well something is supported, in plain words. */
export const MARK_WORDS = sentences('mark', {
  read: 'Read in the paper.',
  'second-hand': 'As quoted elsewhere; not checked against the paper.',
  'from-memory': 'From memory; not checked against the paper.',
  'common-practice': 'Common practice, no source.',
  computed: 'Ours: a definition.',
});
