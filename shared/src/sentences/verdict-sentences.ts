import { CRITERIA, CRITERION_IDS, type CriterionId } from '../criterion.ts';
import { sentences } from './sentence.ts';

/** One text of every criterion, in their fixed order. */
function eachCriterion(text: 'name' | 'sentence'): Record<CriterionId, string> {
  return Object.fromEntries(CRITERION_IDS.map((id) => [id, CRITERIA[id][text]])) as Record<CriterionId, string>;
}

/** Reason shown when a criterion is not met, in the fixed order of the criteria. */
export const CRITERION_SENTENCES = sentences('criterion', eachCriterion('sentence'));

/** What a criterion looks at, for lists. */
export const CRITERION_NAMES = sentences('criterion-name', eachCriterion('name'));

/** Why a criterion was not observed. */
export const NOT_OBSERVED_SENTENCES = sentences('not-observed', {
  placement: 'This sensor placement cannot see it.',
  'no-signal': 'This recording has no usable signal for it here.',
  gap: 'Samples are missing where it is judged.',
  'first-repetition': 'There is no earlier repetition to time this one against.',
  'last-repetition': 'No repetition follows.',
  'not-asked': 'The protocol does not ask for it.',
  'no-reference': 'There is nothing to hold the height against.',
  'one-sign-of-several': 'The force alone shows one sign of several: look at the knee.',
});

/** A verdict in three values. */
export const VERDICT_SENTENCES = sentences('verdict', {
  yes: 'Valid.',
  no: 'Not valid.',
  cannot_tell: 'Cannot tell.',
});

/** What ended the test, as far as the trace shows. */
export const END_RULE_SENTENCES = sentences('end-rule', {
  'last-repetition': 'The trace shows no end before the last repetition.',
  'consecutive-faults': 'Faults of one kind followed each other without a good repetition between.',
  'repetition-cap': 'The preset number of repetitions was reached: the count is a lower bound.',
  'fixed-count': 'The fixed number of repetitions was done.',
  duration: 'The preset time was over.',
});

/** Kinds of fault, counted apart. */
export const FAULT_KIND_SENTENCES = sentences('fault-kind', {
  height: 'height',
  tempo: 'tempo',
  posture: 'knee or trunk',
  support: 'support',
});

/** Why the test ended, as the tester recorded it. */
export const END_REASON_SENTENCES = sentences('end-reason', {
  fatigue: 'Stopped for fatigue.',
  pain: 'Stopped for pain.',
  'other-stop': 'Stopped for another reason.',
  'heel-cannot-leave': 'The heel could not leave the surface any more.',
  'two-prompted-faults': 'Two faults in a row after a prompt.',
  safety: 'The tester stopped the test.',
  technical: 'Technical failure.',
  cap: 'The preset number of repetitions was reached.',
  'fixed-count-done': 'The fixed number of repetitions was done.',
  'trials-done': 'All trials were done.',
});

/** What kind of result the end makes it. */
export const END_CLASS_SENTENCES = sentences('end-class', {
  capacity: 'The count shows what the calf could do.',
  tolerance: 'The count shows what was tolerated before the pain limit, not what the calf could do.',
  incomplete: 'The test is incomplete; its count is not interpreted.',
  censored: 'The count is a lower bound.',
  probe: 'A fixed test: the answer lies in how it was tolerated, not in the count.',
  unknown: 'Why the test ended was not recorded; the count is not interpreted.',
});

/** What is known about the effort. */
export const EFFORT_SENTENCES = sentences('effort', {
  'signs-of-fatigue': 'High exertion and signs of fatigue in the trace.',
  'stopped-before-signs-of-fatigue':
    'Stopped before signs of fatigue: ask about pain, worry, balance or a misunderstanding.',
  'not-a-capacity-test': 'This test was not one of capacity.',
  'too-little-known': 'Too little is known to say how full the effort was.',
});

/** How the reference was formed. */
export const REFERENCE_SENTENCES = sentences('reference', {
  'best-two-of-familiarisation': 'Mean of the best two practice raises.',
  'best-two-of-first-repetitions': 'Mean of the best two of the first repetitions.',
});

/** Lines that stand on every report. */
export const SCOPE_SENTENCES = sentences('scope', {
  scope: "Supports a clinician's judgement. Not a diagnosis.",
  'not-measured': 'not measured',
});
