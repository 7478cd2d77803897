import { sentences } from './sentence.ts';

/** Why the two sides are not set into a ratio. */
export const RATIO_BLOCK_SENTENCES = sentences('ratio-block', {
  'both-sides-sore': 'Both tendons are sore: neither leg shows what the other one could do.',
  'soreness-not-asked': 'It was not recorded for both legs whether they are sore.',
  'ended-for-pain': 'A leg stopped for pain: its result is what was tolerated.',
  'ended-incomplete': 'A leg stopped before its test was complete.',
  'end-not-recorded': 'Why a leg stopped was not recorded.',
  censored: 'A leg reached the preset number: its count is a lower bound.',
  'different-protocol': 'The legs were tested by different protocols.',
  'different-placement': 'The sensor sat in a different place on each leg.',
  'way-not-recorded': 'How a leg was tested, such as the footwear worn, was not recorded.',
  'several-sets': 'A leg has several sets of one way of testing: which one counts was not said.',
  'different-source': 'The two sets came from different kinds of source.',
  'source-not-recorded': 'What kind of source the two sets came from was not recorded.',
  'few-repetitions': 'The leg to compare with has under five repetitions: a small number makes a wild ratio.',
  'within-error': 'The result of the leg to compare with is too small beside the error of such a result.',
  'short-rest': 'The rest between the legs was shorter than two minutes.',
  'rest-not-recorded': 'The rest between the legs was not recorded.',
  'order-not-recorded': 'Which leg came first was not recorded.',
  'earlier-injury':
    'The leg to compare with had surgery, a rupture, a fracture or a tear within twelve months, or it is not known when.',
  'earlier-injury-not-confirmed':
    'The leg to compare with had surgery, a rupture, a fracture or a tear over twelve months ago, and no clinician confirmed it.',
  'earlier-injury-not-asked':
    'Earlier surgery, rupture, fracture or tear of the leg to compare with was not asked about.',
  'signal-not-usable':
    'The recording of a leg is doubtful, lost too many samples, or holds no repetition and no effort.',
  'side-uncertain': 'It is not certain which leg a recording belongs to.',
  'effort-not-full': 'A leg stopped before signs of fatigue.',
  'effort-unknown': 'Too little is known about how full the effort of a leg was.',
  'no-maximum': 'The trials of a leg show no maximum: they differ, still rise, or were not held.',
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

/** What would let the two sides be set into a ratio after all, for each reason against it. */
export const RATIO_UNBLOCK_SENTENCES = sentences('ratio-unblock', {
  'both-sides-sore': 'Follow each leg against its own earlier tests until one is no longer sore.',
  'soreness-not-asked': 'Record for each leg whether it is sore.',
  'ended-for-pain': 'Test again on a day on which pain ends neither leg.',
  'ended-incomplete': 'Test again, with both legs carried to the end.',
  'end-not-recorded': 'Record why each leg stopped.',
  censored: 'Test again without the preset number; until then the count is at least that number.',
  'different-protocol': 'Test both legs by one protocol with the same parameters.',
  'different-placement': 'Test both legs with the sensor in the same place.',
  'way-not-recorded': 'Record how each leg was tested, with the footwear worn.',
  'several-sets': 'Leave one set for each leg.',
  'different-source': 'Take both legs from the same kind of source.',
  'source-not-recorded': 'Record what kind of source each set came from.',
  'few-repetitions': 'Use a test on which the leg to compare with reaches five repetitions, such as two legs together.',
  'within-error': 'Use a test with a smaller error, or one on which the leg to compare with does more.',
  'short-rest': 'Test again with two minutes of rest between the legs.',
  'rest-not-recorded': 'Record the rest between the legs.',
  'order-not-recorded': 'Record which leg was tested first.',
  'earlier-injury':
    'Record when it was. Until twelve months have passed, follow each leg against its own earlier tests and a reference.',
  'earlier-injury-not-confirmed':
    'A clinician may confirm that the leg can be compared with; a caution then goes with the ratio.',
  'earlier-injury-not-asked': 'Ask about earlier surgery, rupture, fracture or tear of the leg to compare with.',
  'signal-not-usable': 'Record again with a sound signal and at least one repetition.',
  'side-uncertain': 'Confirm which leg each recording belongs to.',
  'effort-not-full': 'Ask what stopped the leg (pain, worry, balance, the instruction), then test again.',
  'effort-unknown': 'Record exertion and the reason for the end on both legs.',
  'no-maximum': 'Do further trials until the best two are alike and the last one is not the best.',
  'hands-used': 'Test again with fingertips for balance alone.',
  'hands-observed-once': 'Observe the hands on both legs, or on neither.',
  'different-days': 'Test both legs on one day.',
  'day-not-recorded': 'Record the day of each test.',
  'different-reference': 'Take the reference height of both legs by the same rule.',
  'no-reference': 'Record a reference height for both legs.',
  'nerve-signs': 'Have the signs looked at before anything is compared.',
  'nerve-signs-not-asked': 'Ask about signs of a nerve.',
  'fixed-test': 'Use a test to the end instead of a fixed number or time.',
});

/** Why two values cannot be set into a ratio, whatever they are of. */
export const VALUE_BLOCK_SENTENCES = sentences('value-block', {
  'value-missing': 'A leg has no value.',
  'value-not-positive': 'A leg has a value of zero: a ratio with it says nothing.',
  'uncertainty-missing': 'How far a value can be trusted is not known.',
  'different-unit': 'The values are in different units.',
  'different-convention': 'The values were taken by different conventions, such as net and gross force.',
});

/** What would lift each of them. */
export const VALUE_UNBLOCK_SENTENCES = sentences('value-unblock', {
  'value-missing': 'Measure the leg.',
  'value-not-positive': 'Use a test on which both legs reach more than zero.',
  'uncertainty-missing': 'Give the error of the measure, from your own repeated tests or from a published study.',
  'different-unit': 'Give both values in one unit.',
  'different-convention': 'Take both values by one convention.',
});

/** What goes with a ratio or a change, beside the figure. */
export const COMPARE_CAUTION_SENTENCES = sentences('compare-caution', {
  'other-side-may-be-low': 'The other leg may be low too.',
  'interval-holds-equal': 'Equal legs are within the interval.',
  'earlier-injury-confirmed':
    'The leg to compare with had surgery, a rupture, a fracture or a tear over twelve months ago: it may not show what is usual.',
  'one-sided-sport': 'A sport that loads one leg more can make the legs differ without harm.',
  'leg-length-raise': 'A raise for leg length can make the legs differ.',
  'under-18': 'Under 18 years the legs may differ while growing.',
  'not-asked': 'Something that may make the legs differ was not asked about.',
  'scale-not-known':
    'The error of the calibration of a sensor is not known and in no figure here. It cancels in a ratio only where one calibration counted both.',
  'detectable-is-not-important': 'A change that can be told from the usual wobble need not be an important one.',
  'not-from-people-in-pain': 'The error is not known from people in pain; with pain it may be larger.',
  'first-retest': 'This is the first test after the very first one: practice alone can raise it.',
  'tests-before-not-known': 'How often this test was done before is not known: practice may play a part.',
  'baseline-in-flare': 'The first of the two was taken in a flare: a rise toward the usual is expected by itself.',
  'baseline-not-known': 'Whether the first of the two was taken in a flare is not known.',
});

/** Why no reference group is shown. */
export const NO_REFERENCE_SENTENCES = sentences('no-reference', {
  'set-not-interpreted': 'The set does not show what the calf could do: no group stands beside it.',
  'no-matching-protocol': 'No matching reference for this way of testing.',
  'no-matching-group': 'No reference for people of this age and sex.',
  'not-for-this-measure': 'No matching reference for this way of testing this measure.',
  'under-18':
    'No reference under 18 years. As long as the heel bone grows, its growth plate can be what hurts: ask about it.',
  'age-not-known': 'The age is not known.',
  pregnancy: 'No reference during pregnancy.',
  'pregnancy-not-asked': 'Pregnancy was not asked about.',
  amputation: 'No reference after an amputation.',
  'amputation-not-asked': 'An amputation was not asked about.',
  'nerve-condition': 'No reference with a condition of the nerves.',
  'nerve-condition-not-asked': 'A condition of the nerves was not asked about.',
});

/** Why results of two days stand side by side and are not subtracted. */
export const NO_CHANGE_SENTENCES = sentences('no-change', {
  'different-test': 'The tests were not done in the same way, or it is not known.',
  'different-side': 'The tests are of different legs.',
  'different-unit': 'The results are in different units.',
  'different-convention': 'The results were taken by different conventions.',
  'value-missing': 'A result is missing.',
  'value-not-positive': 'A result is zero: by how many times it changed cannot be said.',
  'set-not-interpreted': 'A set does not show what the calf could do.',
  'day-not-recorded': 'The day of a test was not recorded.',
  'not-in-time-order': 'The tests do not follow each other in time.',
  'no-reliability': 'No error is known for this measure.',
  'reliability-in-other-unit': 'The error of this measure is in another unit.',
});

/** Where a change lies against the usual wobble of its measure. */
export const CHANGE_ZONE_SENTENCES = sentences('change-zone', {
  'likely-real': 'A real change is likely.',
  possible: 'A change is possible.',
  'cannot-tell': 'Cannot be told from the usual wobble of the test.',
});

/** Which error a ratio of the legs rests on. */
export const RATIO_ERROR_SENTENCES = sentences('ratio-error', {
  'own-ratios':
    'The interval rests on ratios that this clinic repeated, so what both legs share of a day is counted once.',
  'sides-independent': 'The interval takes the errors of both legs as independent, which is cautious on one day.',
});

/** What became of the ratios that a clinic repeated itself. */
export const OWN_RATIO_SENTENCES = sentences('own-ratio', {
  used: 'From thirty pairs on their error is used as it was found.',
  'used-with-margin': 'From fifteen to twenty-nine pairs the upper bound of their error is used.',
  'too-few-pairs': 'This clinic has repeated ratios, but under fifteen pairs: they are shown and not used.',
  none: 'This clinic has no repeated ratios of this test.',
});
