import type { SensorLink } from '@surae/sensors';

/** A connection of the page to one device: what rejects is a {@link DeviceError}, and so is what it is closed with. */
export interface Link extends SensorLink {
  readonly name: string;
  readonly isOpen: boolean;
}
