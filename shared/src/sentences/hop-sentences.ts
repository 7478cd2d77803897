import { sentences } from './sentence.ts';

/** What a reader of a hop series must mind. */
export const HOP_CAUTION_SENTENCES = sentences('hop-caution', {
  'ratio-is-no-clearance':
    'Hops that look alike on both sides are no clearance: jump measures and their ratio can look normal in Achilles pain (Kurtz, Transl Sports Med).',
  'leg-not-seen': 'The recording does not show which leg hopped, nor that it was one leg and not two.',
  'fewer-than-asked': 'There were fewer hops than the protocol asks for.',
  'more-than-asked': 'There were more hops than the protocol asks for; none beyond those is analysed.',
  interrupted: 'The person stopped on the ground between two hops.',
  gaps: 'Samples are missing inside the series: hops may be hidden, and some have no times.',
  'times-by-foot-sensor':
    'Times come from a sensor on the foot. How near they are to a platform is known from simulation only.',
  'mass-differs': 'The weight by the hops is not that of the given body mass: check mass, unit and platform.',
});

/** Why there is no hop series, or why that cannot be told. */
export const NO_SERIES_SENTENCES = sentences('no-series', {
  'no-hops': 'No series of hops was found.',
  'weight-differs': 'The force does not carry the weight of a person over whole hops: another unit, foot or movement.',
  'not-zeroed': 'The platform is far from zero with nobody on it: zero it empty and record again.',
  'rate-too-low': 'There are too few samples a second to see a hop.',
  'unlike-hops': 'The flights are not those of hops: they may be steps or strides.',
  'strides-possible': 'Without their times these cannot be told from strides; they are counted only.',
});

/** Why figures of a hop series are not shown. */
export const HOP_WITHHELD_SENTENCES = sentences('hop-withheld', {
  'low-rate': 'Times are not shown: fewer samples a second than the protocol asks for.',
  'no-gyroscope': 'Times are not shown: an accelerometer alone does not show when the toes leave the ground.',
  'unclear-turn': 'Times are not shown: the foot turned about no clear axis.',
  'no-body-mass': 'Stiffness is not shown: enter the body mass.',
  'too-few-hops': 'Means are not shown: the series ends before the hops that are analysed.',
});

/** The conditions before hops. */
export const HOP_ENTRY_SENTENCES = sentences('hop-entry', {
  'safety-clear': 'Safety list clear.',
  'valid-raises': 'Enough valid single-leg raises.',
  'pain-on-raise': 'Little pain on a single raise.',
  'pain-on-trial-hops': 'Little pain on three hops for trial.',
  'no-recent-flare': 'No flare in the last days.',
});
