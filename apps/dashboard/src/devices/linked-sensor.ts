import { LinkSensor, type Sensor, type SensorClock, type SensorPlacement } from '@surae/sensors';
import type { BatteryFollow } from './battery-follow.ts';
import type { DeviceAbout } from './bluetooth-about.ts';
import type { HeldLink } from './held-link.ts';
import type { HeldSensor } from './held-sensor.ts';
import type { SampleReading } from './sample-reading.ts';

export interface LinkedSensorOptions {
  readonly route: 'bluetooth' | 'serial';
  readonly kindName: string;
  readonly link: HeldLink;
  readonly readings: readonly SampleReading[];
  readonly about: DeviceAbout | null;
  readonly battery: BatteryFollow | null;
  readonly descriptionId: string | null;
  readonly placement: SensorPlacement | null;
  readonly clock: SensorClock;
  /** what came last as it came, where packets are found in a stream; the packet that came last when left out */
  readonly recent?: () => Uint8Array | undefined;
}

/** A sensor behind a connection that is held from one recording to the next. */
export class LinkedSensor implements HeldSensor {
  readonly route: 'bluetooth' | 'serial';
  readonly kindName: string;
  readonly about: DeviceAbout | null;
  readonly battery: BatteryFollow | null;
  readonly descriptionId: string | null;
  readonly placement: SensorPlacement | null;
  readonly offers: HeldSensor['offers'];
  readonly sentUnits: HeldSensor['sentUnits'];
  private readonly options: LinkedSensorOptions;

  constructor(options: LinkedSensorOptions) {
    this.options = options;
    this.route = options.route;
    this.kindName = options.kindName;
    this.about = options.about;
    this.battery = options.battery;
    this.descriptionId = options.descriptionId;
    this.placement = options.placement;
    this.offers = options.readings.map(({ channels }) => channels);
    this.sentUnits = options.readings.map(({ sentUnits }) => sentUnits);
  }

  get deviceName(): string {
    return this.options.link.name;
  }

  get isOpen(): boolean {
    return this.options.link.isOpen;
  }

  latestBytes(stream: number): Uint8Array | undefined {
    const { link, recent } = this.options;
    return recent === undefined ? link.latest(stream) : recent();
  }

  makeSensor(offer: number, placement: SensorPlacement): Sensor {
    const { readings, link, clock } = this.options;
    const reading = readings[offer];
    if (reading === undefined) throw new RangeError(`There are ${readings.length} offers, and none is ${offer}.`);
    const { stream, nominalRateHz, makeFeed } = reading;
    return new LinkSensor({
      description: { origin: 'live', placement, nominalRateHz },
      clock,
      feed: makeFeed(),
      makeLink: link.linkFor(stream),
    });
  }

  release(): Promise<void> {
    this.battery?.end();
    return this.options.link.release();
  }
}
