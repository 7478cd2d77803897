import { sentences } from './sentence.ts';

/** Why the two sides are not set into a ratio. */
export const RATIO_BLOCK_SENTENCES = sentences('ratio-block', {
  'both-sides-sore': 'Both tendons are sore: neither leg shows what the other one could do.',
  'soreness-not-asked': 'It was not recorded for both legs whether they are sore.',
  'ended-for-pain': 'A leg stopped for pain: its count is what was tolerated.',
  'ended-incomplete': 'A leg stopped before its test was complete.',
  'end-not-recorded': 'Why a leg stopped was not recorded.',
  censored: 'A leg reached the preset number: its count is a lower bound.',
  'different-protocol': 'The legs were tested by different protocols.',
  'different-placement': 'The sensor sat in a different place on each leg.',
  'different-source': 'The two sets came from different kinds of source.',
  'source-not-recorded': 'What kind of source the two sets came from was not recorded.',
  'few-repetitions': 'The leg to compare with has under five repetitions: a small number makes a wild ratio.',
  'within-error': 'The count of the leg to compare with is too small beside the error of such a count.',
  'short-rest': 'The rest between the legs was shorter than two minutes.',
  'rest-not-recorded': 'The rest between the legs was not recorded.',
  'order-not-recorded': 'Which leg came first was not recorded.',
  'earlier-injury': 'The leg to compare with had surgery, a rupture, a fracture or a tear before.',
  'earlier-injury-not-asked':
    'Earlier surgery, rupture, fracture or tear of the leg to compare with was not asked about.',
  'signal-not-usable': 'The recording of a leg is doubtful, lost too many samples, or holds no repetition.',
  'side-uncertain': 'It is not certain which leg a recording belongs to.',
  'effort-not-full': 'A leg stopped before signs of fatigue.',
  'effort-unknown': 'Too little is known about how full the effort of a leg was.',
  'hands-used': 'The hands helped on a leg, more than the protocol allows.',
  'hands-observed-once': 'The hands were observed on one leg and not on the other.',
  'different-days': 'The legs were tested on different days.',
  'day-not-recorded': 'The day of a test was not recorded.',
  'different-reference': 'The heights of the legs were held against references of different rules.',
  'no-reference': 'A leg had nothing to hold its heights against.',
  'nerve-signs': 'Signs of a nerve or a vessel were ticked before the test.',
  'nerve-signs-not-asked': 'Signs of a nerve or a vessel were not asked about.',
  'fixed-test': 'A fixed number or time was done: it shows how it was tolerated, not how much could be done.',
});

/** Lines around the reasons. */
export const COMPARE_SENTENCES = sentences('compare', {
  'no-ratio': 'No ratio of the two legs is given.',
  'low-too': 'The other leg may be low too.',
});
