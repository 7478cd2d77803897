import type { Entry } from './entry.ts';
import type { ChoiceParameter, NumberParameter } from './parameter.ts';
import type { EndReason } from './protocol.ts';

/** Every parameter of a hop series; changing any of them makes another protocol. */
export interface HopParameters {
  readonly legs: ChoiceParameter<'single' | 'double'>;
  readonly cue: ChoiceParameter<'metronome' | 'none'>;
  /** hops a second at the beat; null for a pace of one's own */
  readonly hopRate: NumberParameter;
  readonly hands: ChoiceParameter<'hips' | 'free'>;
  readonly footwear: ChoiceParameter<'barefoot' | 'thin-sock' | 'shoe'>;
  readonly hopsLeast: NumberParameter;
  readonly hopsMost: NumberParameter;
  readonly analysedFrom: NumberParameter;
  readonly analysedTo: NumberParameter;
  readonly platformRateLeast: NumberParameter;
  readonly footRateLeast: NumberParameter;
  readonly entryValidRaises: NumberParameter;
  readonly entryPainMost: NumberParameter;
  readonly entryFlareFree: NumberParameter;
}

export type HopParameterName = keyof HopParameters;

/** One way of testing repeated hops, complete. */
export interface HopProtocol extends Entry {
  readonly title: string;
  readonly test: 'hop-series';
  readonly parameters: HopParameters;
  readonly requiredSignals: readonly string[];
  readonly endConditions: readonly EndReason[];
  readonly outputs: readonly string[];
  /** what a tester must know before choosing it */
  readonly remarks: readonly string[];
}
