import { sentences } from './sentence.ts';

/** What stands beside the load of a seated set. */
export const SEATED_SENTENCES = sentences('seated', {
  pair: 'A count belongs to its load: sets at another load are not compared with it.',
  body: 'The seat carries the body: work counts the load on the knee and the rise of the knee alone.',
  formulas: 'By two usual formulas, from memory and not checked on seated raises: a rough guide for the next load.',
});

/** Why no load for so many repetitions is named. */
export const NO_MAXIMUM_SENTENCES = sentences('no-maximum', {
  'no-load': 'The load on the knee is not given.',
  'count-out-of-range': 'Named only from 8 to 15 valid repetitions: from other counts it would be a guess.',
  'not-to-fatigue': 'The set did not end because no more were possible.',
  'end-unknown': 'It was not noted why the set ended.',
});
