import type { AdoptedCharacteristic, SensorDocument } from '@surae/sensors';

/** A description that the clinic keeps. */
export interface KeptDescription {
  /** id of its document */
  readonly id: string;
  readonly sensor: SensorDocument;
}

/** How a sensor is spoken to, before any is there. */
export type SensorKind =
  | { readonly kind: 'described'; readonly description: KeptDescription }
  /** one that says itself what it measures */
  | { readonly kind: 'open' }
  | { readonly kind: 'adopted'; readonly adopted: AdoptedCharacteristic };
