import type { CriterionId } from '../../criterion.ts';
import { sentences } from '../sentence.ts';

/** Words of the repetitions of a set, where a person looks at each and may judge otherwise. */
export const HAND_VERDICT_WORDS = sentences('screen.hand-verdict', {
  title: 'Repetitions: press one to see why',
  mark: 'Repetition {index}: {verdict}',
  'mark-by-hand': 'Repetition {index}: {verdict} by hand, {automatic} before',
  opened: 'Repetition {index}',
  automatic: 'Measured: {verdict}.',
  'by-hand': 'By hand: {verdict}, {why}.',
  undo: 'Undo: take the measured verdict',
  'group-yes': 'It counts',
  'group-no': 'It does not count',
  'group-cannot-tell': 'Cannot tell',
  close: 'Leave it as it is',
  yes: 'counts',
  no: 'does not count',
  'cannot-tell': 'cannot tell',
  both: 'By hand {accepted} count, measured {automatic}.',
  agreement: 'Agreement: {agreed} of {of}.',
  'why-untold': 'no reason told',
  'another-movement':
    'A verdict by hand on repetition {index} is left out: measured anew, that number is another movement. Look at it again.',
  'no-repetition': 'A verdict by hand on repetition {index} is left out: measured anew, no repetition has that number.',
});

/** Why a person judges a repetition otherwise; the code is what is stored. A criterion that was not met is a reason of its own. */
export const HAND_REASONS = sentences('hand-reason', {
  'seen-well': 'seen, and well done',
  'sensor-slipped': 'the sensor slipped or shook',
  'near-enough': 'near enough to the limit',
  seen: 'seen',
  'other-fault': 'another fault',
  'not-watched': 'I did not watch it',
  'sensor-doubt': 'the sensor is in doubt',
});

/** The reasons of each verdict, in the order in which they are offered; those of criteria come before them. */
export const HAND_REASONS_FOR = {
  yes: ['seen-well', 'sensor-slipped', 'near-enough'],
  no: ['other-fault'],
  'cannot-tell': ['not-watched', 'sensor-doubt'],
} as const satisfies Record<string, readonly (keyof typeof HAND_REASONS)[]>;

/** Criteria that a person can see not to be met. A gap in the samples is none that one sees. */
export const HAND_CRITERIA = [
  'height',
  'return',
  'tempo',
  'rest',
  'knee',
  'lean',
  'hands',
  'bounce',
  'other-foot',
] as const satisfies readonly CriterionId[];
