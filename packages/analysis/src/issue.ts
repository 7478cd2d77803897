/** Something about the data that a reader must know; the place is on the recording's clock. */
export interface Issue {
  readonly code: IssueCode;
  readonly severity: 'note' | 'warning' | 'invalid';
  readonly fromS: number;
  readonly toS: number;
  /** numbers that the sentence for this code shows */
  readonly details?: Readonly<Record<string, number | string>>;
}

export type IssueCode =
  /** samples missing for longer than a sample or two */
  | 'gap'
  /** isolated spikes removed before detection */
  | 'spikes'
  /** the resting level jumped: the sensor slipped or was moved */
  | 'sensor-moved'
  /** samples pile up at a limit of the sensor */
  | 'saturated'
  /** no quiet stance was found: the floor was taken from the bottoms */
  | 'no-quiet-stance'
  /** sampling rate uneven by more than the rule */
  | 'uneven-sampling'
  /** effective rate too low for the timing shown */
  | 'low-rate'
  /** the signal never moves, or is in another unit */
  | 'flat'
  /** the size is not that of a person on this placement: another unit, another placement, or a sensor at its limit */
  | 'implausible-size'
  /** the signal goes down where a raise goes up */
  | 'upside-down'
  /** gravity has no steady direction: the sensor hung loose or was in a hand */
  | 'orientation'
  /** tilt from the accelerometer alone: fast movement makes it less certain */
  | 'accelerometer-only'
  /** tops or verdicts that the final pass changed against the block pass */
  | 'changed-in-final-pass'
  /** movement that is no heel raise was left out: before or after the set, or all there is */
  | 'movement-outside-set'
  /** the reference height rose because an early repetition was higher */
  | 'reference-raised'
  /** sway is so strong that slow repetitions cannot be told from standing */
  | 'buried'
  /** body weight could not be read from the force */
  | 'no-body-weight'
  /** by hand: two taps so close that they may be one */
  | 'taps-too-close'
  /** by hand: taps that were taken back */
  | 'taps-taken-back'
  /** isometric: samples missing for longer than the protocol allows near a peak */
  | 'samples-missing'
  /** isometric: the load at rest is another one after an effort */
  | 'rest-load-changed'
  /** isometric: the load at rest differs from effort to effort */
  | 'rest-load-differs'
  /** isometric: the sensor was zeroed with the leg on it */
  | 'tare-left-on'
  /** isometric: the signal does not tell which way a pull goes */
  | 'polarity-unclear'
  /** isometric: the sampling rate allows coarse rates of rise only */
  | 'coarse-rate';
