import { sentences } from '../sentence.ts';

/** Words of the page that shows what the two legs did. */
export const RESULT_WORDS = sentences('screen.result', {
  title: 'What the legs did',
  assessing: 'The {leg} leg is gone through once more, from the whole recording …',
  'not-assessed':
    'The set of the {leg} leg could not be assessed: {why} What was recorded is safe and can be saved as a file.',
  'not-read': 'The recording of the {leg} leg could not be opened: {why}',
  'bytes-missing': 'the recorded samples are not in the book.',
  'no-protocol': 'its protocol is not known to this version.',
  unexpected: 'something unexpected happened ({what}).',
  'try-again': 'Try again',
  cautions: 'Read with this in mind',
  details: 'repetition by repetition',
  trace: 'Trace',
  save: 'Save as files',
  'save-samples': 'Samples (CSV)',
  'save-repetitions': 'Repetitions (CSV)',
  'save-report': 'Report (JSON)',
  'save-note': 'The files carry no name of a person.',
  provenance:
    'Protocol {protocol}, version {version}. SHA-256 of the samples {sha256}, of the settings {settings}. {software}.',
  close: 'Close the visit',
  closed: 'This visit is closed. Its result stays as it was stored.',
  'all-people': 'All people',
});

/** Words that say what a leg did; `{leg}` is the word left or right. */
export const SUMMARY_WORDS = sentences('screen.summary', {
  left: 'left',
  right: 'right',
  between: '{what} (between {low} and {high})',
  did: '{leg} did {count}',
  'at-least': '{leg} did at least {count}',
  pain: '{leg} stopped for pain at {count}',
  'ended-early': '{leg} was ended early at {count}',
  probe: '{leg} did {count} of the number that was set',
  'reason-unknown': '{leg} did {count}, and why it ended was not recorded',
  nothing: 'on the {leg} no heel raise was found',
  waiting: '{leg} has no result yet',
  untested: '{leg} was not tested',
  joined: '{first}, {second}.',
  'all-met': '{leg}: all {attempted} that were tried met every rule that could be judged.',
  'some-met': '{leg}: {attempted} tried, {valid} of them met every rule that could be judged.',
  'after-end': '{late} of those came after the test had ended and do not count.',
  same: 'The two legs did the same number; the count cannot tell them apart.',
  'within-variation': 'A difference of {difference} can come from ordinary variation.',
  'beyond-variation': 'A difference of {difference} is larger than the usual wobble of this test.',
  variation:
    'Counts of this test vary by up to {change} between days in people without a sore tendon ({source}). No figure for people with one was found.',
  'variation-practice': 'Counts of this test are taken to vary by up to {change} between days ({source}).',
  'live-differs':
    '{leg}: {live} were counted while recording; the final pass over the whole recording finds {final}. Both are kept.',
  'live-extra': 'Counted only while recording: at {places} s.',
  'live-missing': 'Found only in the final pass: repetition {places}.',
});

/** Words of the axes on which the legs stand, and of their tables. */
export const AXIS_WORDS = sentences('screen.axis', {
  score: 'Repetitions that count',
  'score-unit': 'repetitions',
  'first-three-heel': 'Heel height, mean of the first three',
  'peak-heel': 'Heel height, highest',
  'first-three-rise': 'Body rise, mean of the first three',
  'peak-rise': 'Body rise, highest',
  'height-unit': 'cm',
  left: 'Left',
  right: 'Right',
  measure: 'Measure',
  'interval-name': '95 % interval',
  interval: '95 %: {low} to {high}',
  exact: '95 %: only {low}',
  unbounded: 'no upper bound',
  'at-least': 'at least {value}',
  open: 'not measured',
  'not-tested': 'This leg was not tested.',
  'no-result': 'There is no result yet.',
  'another-way': 'This leg was measured in another way.',
  'too-few': 'Fewer than three repetitions have a height.',
  'no-height': 'No repetition has a height.',
});

/** Words of the list of repetitions. */
export const REPETITION_WORDS = sentences('screen.repetitions', {
  caption: 'Repetitions of the set, one a row',
  index: 'No.',
  'heel-height': 'Height, cm',
  'body-rise': 'Rise, cm',
  period: 'Period, s',
  verdict: 'Verdict',
  'with-uncertainty': '{value} ± {u}',
  open: 'not measured',
  'first-period': 'first one',
  yes: 'met',
  no: 'not met',
  cannot_tell: 'cannot tell',
  'with-reasons': '{verdict}: {reasons}',
  perhaps: 'perhaps {reason}',
  close: '{what} close to the limit',
  together: 'each rule just met, together in doubt',
  'after-end': 'after the end of the test',
  unseen: 'not observed: {what}',
  'unseen-all': 'Not observed on any repetition: {what}. What was not observed is not counted as met.',
  strip: 'Verdicts in order: {yes} met, {no} not met, {cannotTell} cannot tell.',
  none: 'No heel raise was found.',
});
