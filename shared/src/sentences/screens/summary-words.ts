import { sentences } from '../sentence.ts';

/** Words that say what a leg did; `{leg}` is the word left or right. */
export const SUMMARY_WORDS = sentences('screen.summary', {
  left: 'left',
  right: 'right',
  between: '{what} (between {low} and {high})',
  did: '{leg} did {count}',
  'at-least': '{leg} did at least {count}',
  pain: '{leg} stopped for pain with {count} that count',
  'ended-early': '{leg} was ended early with {count} that count',
  popped: '{leg} stopped for a pop or a sudden give, so there is no score',
  probe: '{leg} did {count} of the number that was set',
  'reason-unknown': '{leg} did {count}, and why it ended was not recorded',
  nothing: 'on the {leg} no heel raise was found',
  waiting: '{leg} has no result yet',
  untested: '{leg} was not tested',
  joined: '{first}, {second}.',
  alone: '{what}.',
  'all-met': '{leg}: all {attempted} that were tried met every rule that could be judged.',
  'some-met': '{leg}: {attempted} tried, {valid} of them met every rule that could be judged.',
  'after-end': '{late} of those came after the test had ended and do not count.',
  'live-differs':
    '{leg}: {live} were counted while recording; the final pass over the whole recording finds {final}. Both are kept.',
  'live-extra': 'Counted only while recording: at {places} s.',
  'live-missing': 'Found only in the final pass: repetition {places}.',
});
