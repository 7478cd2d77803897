import type { Entry } from './entry.ts';
import type { ChoiceParameter, NumberParameter } from './parameter.ts';
import type { EndReason } from './protocol.ts';

/** Every parameter of an isometric protocol; changing any of them makes another protocol. */
export interface PullParameters {
  readonly position: ChoiceParameter<'seated' | 'standing' | 'long-sitting'>;
  readonly knee: ChoiceParameter<'bent' | 'straight'>;
  /** ramped up to a maximum that is held, or made as fast as possible */
  readonly effort: ChoiceParameter<'ramp' | 'fast'>;
  /** from the foot at a right angle to the shank; dorsiflexion counts up */
  readonly ankleAngle: NumberParameter;
  readonly warmUpPulls: NumberParameter;
  /** stillness that is recorded before an effort */
  readonly stillBefore: NumberParameter;
  readonly rampTime: NumberParameter;
  readonly hold: NumberParameter;
  readonly leastTrials: NumberParameter;
  readonly mostTrials: NumberParameter;
  readonly rest: NumberParameter;
  readonly breathing: ChoiceParameter<'breathe-out' | 'none'>;
  readonly scoreRule: ChoiceParameter<PullScoreRule>;
  /** window of the rolling mean that a strength effort is scored by */
  readonly scoreWindow: NumberParameter;
  /** window after the onset that a fast effort is scored by */
  readonly rateWindow: NumberParameter;
  /** best trials that are averaged */
  readonly averagedTrials: NumberParameter;
  /** greatest scatter of the still baseline: the greater of a fixed one and a share of the peak */
  readonly stillForceMost: NumberParameter;
  readonly stillTorqueMost: NumberParameter;
  readonly stillShareMost: NumberParameter;
  /** deepest dip before the onset: the greater of a fixed one and a share of the peak */
  readonly dipForceMost: NumberParameter;
  readonly dipTorqueMost: NumberParameter;
  readonly dipShareMost: NumberParameter;
  /** deepest dip, and greatest creep of tension, before the onset of an effort whose rate of rise is given */
  readonly riseDipForceMost: NumberParameter;
  readonly riseDipTorqueMost: NumberParameter;
  readonly creepForceMost: NumberParameter;
  readonly creepTorqueMost: NumberParameter;
  /** the start of a fast effort is distinct if its onset is known to so much, in 95 % of cases, or to one sample */
  readonly onsetWithinMost: NumberParameter;
  /** greatest standard uncertainty of a rate of rise that is given, in shares of it */
  readonly rateUncertaintyMost: NumberParameter;
  /** a plateau lies within this share of the peak, and lasts at least */
  readonly plateauShare: NumberParameter;
  readonly plateauLeast: NumberParameter;
  /** longest stretch without samples near the peak */
  readonly gapMost: NumberParameter;
  /** greatest change of the resting level over an effort */
  readonly tareForceMost: NumberParameter;
  readonly tareTorqueMost: NumberParameter;
  /** share by which the best two trials differ at most: good, fair; a last trial best by more than the first still rises */
  readonly alikeGood: NumberParameter;
  readonly alikeFair: NumberParameter;
  /** a last trial that beats the best before by more asks for another */
  readonly improvement: NumberParameter;
  /** share of the best peak that makes a push a full one: smaller ones before the first full one are warm-ups */
  readonly fullShareLeast: NumberParameter;
  readonly painLimit: NumberParameter;
}

/** What the result of an isometric test is. */
export type PullScoreRule =
  /** greatest of the best means over the score window */
  | 'best-mean'
  /** greatest force */
  | 'best-peak'
  /** mean of the best few rates of rise over the rate window */
  | 'mean-of-best-rates';

export type PullParameterName = keyof PullParameters;

/** One way of testing isometric strength, complete: its parameters, what it needs, how it may end, what it yields. */
export interface PullProtocol extends Entry {
  readonly title: string;
  readonly test: 'isometric';
  readonly parameters: PullParameters;
  readonly requiredSignals: readonly string[];
  readonly endConditions: readonly EndReason[];
  readonly outputs: readonly string[];
  /** what a tester must know before choosing it */
  readonly remarks: readonly string[];
}
