import type { CriterionParameters } from './criterion.ts';
import type { Entry } from './entry.ts';
import type { ChoiceParameter, NumberParameter } from './parameter.ts';

export type Surface = 'floor' | 'incline10' | 'step';
export type ReferenceRule = 'best-two-of-familiarisation' | 'best-two-of-first-repetitions';
export type EndReason =
  | 'fatigue'
  | 'pain'
  | 'other-stop'
  | 'heel-cannot-leave'
  | 'two-prompted-faults'
  | 'safety'
  | 'technical'
  | 'cap'
  | 'fixed-count-done'
  /** isometric: as many trials as were asked for */
  | 'trials-done';

/** Every parameter of a heel-raise protocol, those of its criteria among them; changing any of them makes another protocol. */
export interface ProtocolParameters extends CriterionParameters {
  readonly surface: ChoiceParameter<Surface>;
  readonly legs: ChoiceParameter<'single' | 'double'>;
  readonly knee: ChoiceParameter<'straight' | 'bent'>;
  readonly kneeFlexionHeld: NumberParameter;
  readonly support: ChoiceParameter<'fingertips' | 'rail' | 'none'>;
  readonly footwear: ChoiceParameter<'barefoot' | 'thin-sock' | 'shoe'>;
  readonly cue: ChoiceParameter<'metronome' | 'light' | 'none'>;
  readonly encouragement: ChoiceParameter<'scripted' | 'none'>;
  /** `on-knee`: seated, the load lies on the knee and the seat carries the body */
  readonly externalMass: ChoiceParameter<'none' | 'declared' | 'on-knee'>;
  /** time from one repetition to the next at the beat */
  readonly cycleTarget: NumberParameter;
  readonly upTarget: NumberParameter;
  readonly downTarget: NumberParameter;
  readonly cycleLeast: NumberParameter;
  readonly heightLeast: NumberParameter;
  readonly fallFraction: NumberParameter;
  readonly referenceRule: ChoiceParameter<ReferenceRule>;
  readonly referenceRaises: NumberParameter;
  readonly referenceBest: NumberParameter;
  readonly referenceRaisedBy: NumberParameter;
  readonly endFaultsInARow: NumberParameter;
  readonly repetitionCap: NumberParameter;
  readonly fixedCount: NumberParameter;
  readonly duration: NumberParameter;
  readonly painLimit: NumberParameter;
}

export type ParameterName = keyof ProtocolParameters;

/** From how many repetitions at a load the load for so many is read, and between which counts only. */
export interface RepetitionMaximum extends Entry {
  /** repetitions of the load that is named */
  readonly target: number;
  readonly countLeast: number;
  readonly countMost: number;
}

/** One way of testing, complete: its parameters, what it needs, how it may end, what it yields. */
export interface Protocol extends Entry {
  readonly title: string;
  readonly test: 'heel-raise';
  readonly parameters: ProtocolParameters;
  readonly requiredSignals: readonly string[];
  readonly endConditions: readonly EndReason[];
  readonly outputs: readonly string[];
  /** for a test at a load: when the load for so many repetitions may be named */
  readonly repetitionMaximum?: RepetitionMaximum;
  /** what a tester must know before choosing it */
  readonly remarks: readonly string[];
}
