import type { ChannelNature, Sensor, SensorPlacement } from '@surae/sensors';
import type { DeviceAbout } from './bluetooth-about.ts';

/** The battery of a sensor, as the sensor tells of it while it is connected. */
export interface HeldBattery {
  /** charge that was told last, 0 to 100; null when none is told [%] */
  readonly percent: number | null;
  /** Calls whenever another charge is told, or none any more. */
  onChange(listener: () => void): void;
}

/** A sensor that was connected: whatever is recorded comes from it, one recording after the other. */
export interface HeldSensor {
  readonly route: 'bluetooth' | 'serial' | 'motion';
  /** what it is, by its description or its standard */
  readonly kindName: string;
  /** what the device or the port calls itself */
  readonly deviceName: string;
  /** what it says of itself; null when it was not asked */
  readonly about: DeviceAbout | null;
  /** its battery, followed while it is connected; null where nothing can tell of one */
  readonly battery: HeldBattery | null;
  /** id of the document with its description; null where it has none */
  readonly descriptionId: string | null;
  /** where it is worn or stands, as its description says; a hint */
  readonly placement: SensorPlacement | null;
  /** what it sends, one list for each clock */
  readonly offers: readonly (readonly ChannelNature[])[];
  /** UCUM code of the unit in which each of these channels is sent, as its description says */
  readonly sentUnits: readonly (readonly string[])[];
  readonly isOpen: boolean;
  /** The bytes that came last from one of its streams: a packet, or some of a stream without borders; undefined where there are none. */
  latestBytes(stream: number): Uint8Array | undefined;
  /** A source for one recording of one of the offers. */
  makeSensor(offer: number, placement: SensorPlacement): Sensor;
  /** Lets the device go. */
  release(): Promise<void>;
}
