import { sentences } from '../sentence.ts';

/** Words of warm-up and practice before a set; all of it can be left out. */
export const PRACTICE_WORDS = sentences('screen.practice', {
  fold: 'Warm-up and practice raises (can be left out)',
  'warm-up': 'Ten raises on both legs at the beat, then a rest of {rest} s.',
  'begin-warm-up': 'Begin the warm-up',
  raising: 'Raise at the beat: {left} s to go.',
  resting: 'Rest: {left} s to go.',
  'warm-up-over': 'Warm-up and rest are over.',
  'leave-out': 'Leave the rest out',
  raises: 'Then {n} slow, full raises on this leg. Their height is what the set is held against.',
  begin: 'Record {n} practice raises',
  again: 'Record them again',
  running: 'Practice raises: {count} of {n}',
  stop: 'Stop the practice',
  looking: 'Looking at the practice raises …',
  reference: 'Reference height: {height} cm, from the best two of {n} practice raises.',
  'reference-unknown':
    'The practice is kept, but the heights of at least two raises could not be told. The set is held against its own first repetitions.',
  'not-live': 'Practice is recorded from a sensor or a simulated person, not from a file.',
  'not-begun': 'The practice did not start. {reason}',
  'cut-off':
    'The page was closed or left during the practice of this leg. {seconds} s of it are kept, and count for nothing: record it again, or go on without.',
  'cut-off-empty':
    'The page was closed or left before any samples of the practice of this leg came. Nothing was measured.',
  'cut-off-unreadable':
    'The page was closed or left during the practice of this leg. What was kept of it counts for nothing and cannot be read: {reason}',
  'reference-left': 'Left leg, reference {height} cm. {rule}',
  'reference-right': 'Right leg, reference {height} cm. {rule}',
  raised: 'One of the first repetitions was higher than the practice raises and took their place.',
  'lower-left': 'Target lower on the left: {low} cm against {high} cm. A count there is of lower raises.',
  'lower-right': 'Target lower on the right: {low} cm against {high} cm. A count there is of lower raises.',
});
