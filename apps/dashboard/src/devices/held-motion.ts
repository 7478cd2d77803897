import type { ChannelNature, Sensor, SensorClock, SensorPlacement } from '@surae/sensors';
import { ArrivalTimed } from './arrival-timed.ts';
import type { HeldSensor } from './held-sensor.ts';
import type { MotionSign } from './motion-sign.ts';
import { PhoneMotion, type PhoneMotionOptions } from './phone-motion.ts';

export interface HeldMotionOptions extends Pick<PhoneMotionOptions, 'events' | 'firstReadingMs'> {
  readonly kindName: string;
  readonly deviceName: string;
  readonly sign: MotionSign;
  readonly clock: Pick<SensorClock, 'nowMs'>;
  /** whether the device tells its turning as well */
  readonly hasTurning: boolean;
}

const axes = ['x', 'y', 'z'] as const;
const forces = axes.map((axis): ChannelNature => ({ quantity: 'acceleration', axis, unit: 'm/s2' }));
const turnings = axes.map((axis): ChannelNature => ({ quantity: 'angular-velocity', axis, unit: 'rad/s' }));

/** The motion of the device that the page runs on: it is always there, and each recording listens anew. */
export class HeldMotion implements HeldSensor {
  readonly route = 'motion';
  readonly about = null;
  readonly battery = null;
  readonly descriptionId = null;
  readonly placement = null;
  readonly isOpen = true;
  readonly kindName: string;
  readonly deviceName: string;
  readonly offers: HeldSensor['offers'];
  readonly sentUnits: HeldSensor['sentUnits'];
  private readonly options: HeldMotionOptions;

  constructor(options: HeldMotionOptions) {
    this.options = options;
    this.kindName = options.kindName;
    this.deviceName = options.deviceName;
    this.offers = [options.hasTurning ? [...forces, ...turnings] : forces];
    this.sentUnits = this.offers.map((channels) => channels.map(({ unit }) => unit));
  }

  latestBytes(): undefined {
    return undefined;
  }

  makeSensor(_offer: number, placement: SensorPlacement): Sensor {
    const { clock, events, sign, firstReadingMs } = this.options;
    return new ArrivalTimed(new PhoneMotion({ placement, clock, events, sign, firstReadingMs }));
  }

  release(): Promise<void> {
    return Promise.resolve();
  }
}
