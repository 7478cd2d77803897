import { sentences } from '../sentence.ts';

/** Words where both legs are sore: each by itself, and no ratio. `{leg}` is left or right at the begin of a sentence. */
export const BILATERAL_WORDS = sentences('screen.bilateral', {
  title: 'Both legs are sore: each against its own start',
  'governs-side':
    'The {leg} leg governs: it is the more irritable one ({grade}, the other {other}). Go on by how it responds.',
  'governs-alike': 'Both legs are graded {grade}. Go on by whichever responds worse.',
  'governs-cannot-tell': 'Cannot tell which leg governs: irritability was not graded of the {legs}.',
  left: 'left leg',
  right: 'right leg',
  'both-legs': 'left leg and the right leg',
  low: 'low',
  moderate: 'moderate',
  high: 'high',
  since: '{leg}: {difference} than at its start, {day}. {zone}',
  'since-equal': '{leg}: the same as at its start, {day}. {zone}',
  'since-open': '{leg}: no change since its start, {day}, is given. {why}',
  'no-start': '{leg}: this is its first test of this complaint done in this way, and so its start.',
  'not-now': '{leg}: this test is not held against its start. {why}',
  'start-in-flare':
    '{leg}: the start was taken in a flare. What came since may be the flare going: it shows what is tolerated before it shows what the calf can do.',
  'now-in-flare': '{leg}: this start was taken in a flare, so that later tests will look better beside it.',
  'target-yes': '{leg}: the target of {target} {unit} is reached ({low} to {high}).',
  'target-no': '{leg}: the target of {target} {unit} is not reached ({low} to {high}).',
  'target-cannot_tell': '{leg}: cannot tell whether the target of {target} {unit} is reached ({low} to {high}).',
  'target-not-held':
    '{leg}: the target of {target} {unit} is not held against this test, which does not show what the calf could do.',
  repetitions: 'repetitions',
  'times-body-weight': 'times body weight',
});

/** The same for who was tested. */
export const LEGS_BOTH_WORDS = sentences('screen.legs-both', {
  'governs-left': 'Your left leg is the touchier one, so it sets the pace.',
  'governs-right': 'Your right leg is the touchier one, so it sets the pace.',
  'governs-alike': 'Both legs are about as touchy. The one that answers worse sets the pace.',
  'governs-cannot-tell': 'Which leg sets the pace cannot be told yet.',
  'start-in-flare': '{leg}: this first test was on a sorer day than usual. Later ones may look better for that alone.',
  'target-yes': '{leg}: you have reached the {target} {unit} you work toward.',
  'target-no': '{leg}: you work toward {target} {unit}, and are on the way.',
  'target-cannot_tell': '{leg}: you work toward {target} {unit}. The test cannot tell yet if you are there.',
  'group-below': '{leg}: in every study of people tested in the same way, the middle person did more.',
  'group-near': '{leg}: about like the middle person in studies of people tested in the same way.',
  'group-above': '{leg}: more than the middle person in every study of people tested in the same way.',
  'group-mixed': '{leg}: studies of other people do not agree where this lies.',
});
