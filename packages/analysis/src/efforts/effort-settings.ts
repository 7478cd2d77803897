/** How pulls are found in a trace. */
export interface PullRule {
  /** blocks of which the medians are taken first [s], and window of the running median over them [s] */
  readonly blockS: number;
  readonly medianS: number;
  /** window and share of the rolling quantile that is the resting level to begin with [s, -] */
  readonly restWindowS: number;
  readonly restShare: number;
  /** smaller rises are no efforts [N], [N.m], in robust standard deviations of the rest [-], in shares of the greatest [-] */
  readonly leastN: number;
  readonly leastNm: number;
  readonly leastNoise: number;
  readonly leastShare: number;
  /** share of its own size that an effort rises from the valleys beside it [-] */
  readonly ownRise: number;
  /** time above half of its own size; less is a knock [s] */
  readonly leastS: number;
  /** shares of its range in which a signal is near an end of it [-], and difference of scores that tells the polarity [-] */
  readonly nearShare: number;
  readonly polarityLead: number;
  /** quantiles that are taken for the ends of that range [-] */
  readonly lowQuantile: number;
  readonly highQuantile: number;
  /** length of the two ends of a recording [s], and score of one that lies at an end of the range [-] */
  readonly endS: number;
  readonly endScore: number;
}

/** How the resting level beside an effort is taken. */
export interface RestRule {
  /** longest and shortest stretch [s], blocks that are averaged in it [s] */
  readonly windowS: number;
  readonly leastS: number;
  readonly blockS: number;
  /** share of the way from 5 to 50 % by which the foot of an effort lies before the 5 % point [-], and a margin [s] */
  readonly footShare: number;
  readonly marginS: number;
  /** blocks this many robust standard deviations from the middle are left out [-] */
  readonly outlying: number;
  /** least uncertainty of the line between the two levels, in shares of their difference [-] */
  readonly lineShare: number;
}

/** What is expected of a rise before it is seen: middle and spread of each figure. */
export interface RisePrior {
  /** the curve is fitted up to this share of the peak [-] */
  readonly fitShare: number;
  /** powers of time that are tried for the start of the rise [-], the usual one, and the spread of its logarithm [-] */
  readonly powers: readonly number[];
  readonly power: number;
  readonly powerSpread: number;
  /** see `settling` of a rise curve [-] */
  readonly settling: number;
  readonly settlingSpread: number;
  /** spread of the logarithms of rise time and height about their first guesses [-], of the start in shares of the rise time [-] */
  readonly riseSpread: number;
  readonly heightSpread: number;
  readonly startSpread: number;
  /** how often slack is taken up first [-], and powers of time that are tried for the rise after it [-] */
  readonly takeUpChance: number;
  readonly takenUpPowers: readonly number[];
  /** usual power of time in it [-], length of it [s] and share of the height [-], with the spreads of their logarithms [-] */
  readonly takeUpPower: number;
  readonly takeUpPowerSpread: number;
  readonly takeUpS: number;
  readonly takeUpSpread: number;
  readonly takeUpShare: number;
  readonly shareSpread: number;
  /** multiples of the uncertainty that the fit gives [-] */
  readonly fitU: number;
  /** uncertainty of the form where the rise starts with the second power of time, in shares of the rise time [-]; it grows with this power of the excess over one [-] */
  readonly formU: number;
  readonly formPower: number;
}

/** How the beginning of an effort is found. */
export interface OnsetRule {
  /** low-pass in which the crossings are looked for [Hz], and their shares of the peak [-] */
  readonly cutoffHz: number;
  readonly lowShare: number;
  readonly highShare: number;
  /** the curve is fitted from at least this long before the straight estimate [s] */
  readonly fitBeforeS: number;
  /** after a dip or creeping tension only samples above this share of the peak are fitted [-] */
  readonly disturbedShare: number;
  /** departure before the onset that counts as such: the greater of so many standard deviations and a share of the peak [-] */
  readonly disturbedNoise: number;
  readonly disturbedLeast: number;
  /** what is expected of the rise of an effort made as fast as possible, and of a ramp */
  readonly fast: RisePrior;
  readonly ramp: RisePrior;
  /** unsteadiness of a rising force, in shares of it [-], and independent values of it in a second [Hz] */
  readonly unsteadyShare: number;
  readonly unsteadyHz: number;
  /** share of the unevenness of stamps that neither account of it explains: the samples uneven, or their stamps alone [-] */
  readonly stampShare: number;
  /** degrees of freedom of the distribution of departures: few leave knocks little weight [-] */
  readonly freedom: number;
  /** uncertainty of an onset by what happens between the values that are fitted, in shares of the time between them [-] */
  readonly sampleU: number;
  /** samples are averaged so that no more than twice so many values are fitted [-] */
  readonly mostBlocks: number;
  /** uncertainty of a straight line to zero, in shares of the way from there to its upper crossing [-] */
  readonly lineU: number;
}

/** How peak, plateau and the rise are measured. */
export interface MeasureRule {
  /** low-pass for the greatest force [Hz], and multiple of its noise that a maximum of noise lies too high [-] */
  readonly peakCutoffHz: number;
  readonly peakNoiseBias: number;
  /**
   * knocks: averaging [s], least size in standard deviations of the noise and in shares of the greatest force [-],
   * cleared on both sides [s], rounds, and
   * low-passes in each [-] */
  readonly knockS: number;
  readonly knockNoise: number;
  readonly knockShare: number;
  readonly knockMarginS: number;
  readonly knockRounds: number;
  readonly knockPasses: number;
  /** large knocks first: window of a running median [s], and least size in shares of it, besides the noise [-] */
  readonly grossWindowS: number;
  readonly grossShare: number;
  /** window of the mean [s] */
  readonly meanWindowS: number;
  /** a plateau lies within this share of the peak [-] */
  readonly plateauShare: number;
  /**
   * a force on the rise is read from samples this long on both sides [s], without those that lie further from the curve than
   * so many standard deviations [-] of noise and of a share of its height [-]; uncertainty of a reading in shares of it, and of
   * each sample in it by what is not noise of the sensor [-]
   */
  readonly readS: number;
  readonly readOutlying: number;
  readonly readShare: number;
  readonly readU: number;
  readonly readSampleU: number;
  /** windows after the onset [s] and the least sampling rate for each [Hz] */
  readonly rateWindowsS: readonly number[];
  readonly rateLeastHz: readonly number[];
  /** window after the onset whose impulse is given [s], and shares of the peak until which the time is given [-] */
  readonly impulseWindowS: number;
  readonly reachedShares: readonly number[];
  /** the onset of a fast effort with a distinct start lies within so much of its value, in 95 % of cases, or within one sample [s] */
  readonly onsetWithinS: number;
  /** greatest standard uncertainty of a rate that is given, in shares of it [-] */
  readonly rateUncertaintyMost: number;
  /** rates below this are marked coarse [Hz]; share by which a rate may fall short of its nominal value [-] */
  readonly coarseBelowHz: number;
  readonly rateTolerance: number;
  /** share of the peak from which a force is held [-], and shares between which the time of the rise is taken [-] */
  readonly heldShare: number;
  readonly riseLowShare: number;
  readonly riseHighShare: number;
  /** longest rise between those shares of an effort made as fast as possible [s] */
  readonly fastRiseS: number;
  /** standard uncertainty of the time at which a flat top is greatest, or a plateau begins or ends [s] */
  readonly timeUS: number;
  /** multiples of the propagated uncertainties of peak, mean and rate [-] */
  readonly peakU: number;
  readonly meanU: number;
  readonly riseU: number;
  /** relative uncertainty of what the filter does to a peak, and of a mean [-] */
  readonly peakRelativeU: number;
  readonly meanRelativeU: number;
  /** uncertainty of a mean by what happens between its samples, in shares of the peak, for a single sample [-] */
  readonly meanSampleU: number;
}

/** When an effort is accepted. */
export interface AcceptRule {
  /** greatest scatter of the still baseline, in N or N.m, and in shares of the peak: the greater holds [N], [N.m], [-] */
  readonly stillN: number;
  readonly stillNm: number;
  readonly stillShare: number;
  /** deepest dip before the onset: the greater of two [N], [N.m], [-] */
  readonly dipN: number;
  readonly dipNm: number;
  readonly dipShare: number;
  /** shortest plateau of a strength effort [s] */
  readonly plateauS: number;
  /** longest stretch without samples near the peak or in the rise [s], and how near that is [s] */
  readonly gapS: number;
  readonly gapNearS: number;
  /** greatest change of the resting level over an effort [N], [N.m] */
  readonly tareN: number;
  readonly tareNm: number;
  /** share of readings of the plateau at one limit from which it is clipped [-] and shortest run of them [s] */
  readonly clipRunS: number;
  readonly clipPile: number;
  /** for the rate of rise: greatest creep [N/s], [N.m/s] and deepest dip [N], [N.m] before the onset; window looked at [s] */
  readonly creepNps: number;
  readonly creepNmps: number;
  readonly riseDipN: number;
  readonly riseDipNm: number;
  readonly beforeS: number;
  /** part of that window next to the onset which the low-pass mixes with the rise [s] */
  readonly blurredS: number;
}

/** When trials agree, and when another one is asked for. */
export interface TrialRule {
  /** share of the best peak from which a push is full: smaller ones before the first full one are warm-ups; 0 asks for none [-] */
  readonly fullShare: number;
  readonly leastCount: number;
  readonly mostCount: number;
  /** best two within this share: good, fair [-] */
  readonly goodShare: number;
  readonly fairShare: number;
  /** a last trial that beats the best before by more asks for another [-] */
  readonly improvingShare: number;
  /** best trials that are averaged [-] */
  readonly averaged: number;
}

/**
 * Everything that the measurement of isometric efforts takes as given: numbers of the method, and rules of the test, which a
 * protocol states.
 */
export interface EffortSettings {
  readonly pull: PullRule;
  readonly rest: RestRule;
  readonly onset: OnsetRule;
  readonly measure: MeasureRule;
  readonly accept: AcceptRule;
  readonly trials: TrialRule;
}

/** What is looked at in a recording of pulls as a whole. */
export interface PullSignalRule {
  /** greatest net force or torque of a person [N], [N.m] */
  readonly mostN: number;
  readonly mostNm: number;
  /** rate from which a peak is sure to be seen [Hz] */
  readonly peakLeastHz: number;
  /** least load of a resting leg on a plate [N], and in shares of body weight where the mass is known [-] */
  readonly legLeastN: number;
  readonly legLeastShare: number;
  /** the load at rest differs between efforts by more than this [N], [N.m] */
  readonly restSpreadN: number;
  readonly restSpreadNm: number;
  /** standard uncertainty of the measured lever of the forefoot [m] */
  readonly leverUM: number;
}

/** How peak, plateau and the rise are measured, apart from what the protocol states. */
export type MeasureMethod = Omit<MeasureRule, 'meanWindowS' | 'plateauShare' | 'onsetWithinS' | 'rateUncertaintyMost'>;
type MethodOfAccept = Pick<AcceptRule, 'gapNearS' | 'clipRunS' | 'clipPile' | 'beforeS' | 'blurredS'>;

/** The numbers of the method alone; what is a rule of the test stands in its protocol. */
export interface EffortMethod {
  readonly pull: PullRule;
  readonly rest: RestRule;
  readonly onset: OnsetRule;
  readonly measure: MeasureMethod;
  readonly accept: MethodOfAccept;
  readonly signal: PullSignalRule;
}
