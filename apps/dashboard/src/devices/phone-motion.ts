import {
  type BlockChannel,
  type Sensor,
  type SensorClock,
  type SensorDescription,
  SensorError,
  type SensorEvent,
  type SensorPlacement,
  type SensorStatus,
} from '@surae/sensors';
import { DeviceError } from './device-error.ts';
import { MotionMeasure, type MotionQuality } from './motion-quality.ts';
import { type MotionEventLike, type MotionReading, motionReading } from './motion-reading.ts';
import type { MotionSign } from './motion-sign.ts';
import { withinTime } from './time-limit.ts';

export interface PhoneMotionOptions {
  readonly placement: SensorPlacement;
  readonly clock: Pick<SensorClock, 'nowMs'>;
  /** where the events come: the window */
  readonly events: Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;
  /** how the browser signs accelerations */
  readonly sign: MotionSign;
  /** after this long without a reading there is no sensor [ms] */
  readonly firstReadingMs: number;
}

const axes = ['x', 'y', 'z'] as const;

/**
 * The motion sensor of the phone or tablet that the page runs on, in the axes of the device: they do not turn with the
 * screen. It has no clock and no counter of its own: each reading is a block that carries the time of its arrival, and what
 * the browser leaves out while it is busy or hidden cannot be seen but in those times.
 */
export class PhoneMotion implements Sensor {
  readonly description: SensorDescription;
  private readonly options: PhoneMotionOptions;
  private readonly measure = new MotionMeasure();
  private state: SensorStatus = 'idle';
  private listener: (event: SensorEvent) => void = () => {};
  private heardFirst: () => void = () => {};
  private nextIndex = 0;
  private hasTurning = false;

  constructor(options: PhoneMotionOptions) {
    this.options = options;
    this.description = { origin: 'live', placement: options.placement, nominalRateHz: null };
  }

  get status(): SensorStatus {
    return this.state;
  }

  /** What was measured so far of how well it streams. */
  get quality(): MotionQuality {
    return this.measure.result();
  }

  /** Begins to stream once the first reading has come; rejects with a {@link DeviceError} `no-sensor` when none comes. */
  async start(listener: (event: SensorEvent) => void): Promise<void> {
    if (this.state !== 'idle') throw new SensorError('already-started', 'This source has streamed before.');
    this.state = 'streaming';
    this.listener = listener;
    const first = new Promise<void>((resolve) => (this.heardFirst = resolve));
    const { events, firstReadingMs } = this.options;
    events.addEventListener('devicemotion', this.hear);
    try {
      await withinTime(first, firstReadingMs, 'Waiting for the first reading');
    } catch (error) {
      events.removeEventListener('devicemotion', this.hear);
      this.state = 'failed';
      throw new DeviceError('no-sensor', 'The browser told no motion: this device has no sensor, or keeps it.', {
        cause: error,
      });
    }
  }

  stop(): void {
    if (this.state !== 'streaming') return;
    this.options.events.removeEventListener('devicemotion', this.hear);
    this.state = 'ended';
    // whoever still waits for the first reading waits for nothing more
    this.heardFirst();
    this.listener({ kind: 'ended' });
  }

  private readonly hear = (event: Event): void => {
    const hostTimeMs = this.options.clock.nowMs();
    const motion = event as Event & MotionEventLike & { readonly interval?: number };
    const reading = motionReading(motion, this.options.sign);
    if (reading === null) return;
    // a stream keeps the channels that it began with
    if (this.nextIndex === 0) this.hasTurning = reading.turning !== null;
    if (this.hasTurning && reading.turning === null) {
      this.measure.leaveOut();
      return;
    }
    this.measure.add(reading, hostTimeMs, motion.interval ?? null);
    const channels = this.channels(reading);
    this.listener({
      kind: 'block',
      block: { firstIndex: this.nextIndex, deviceTimesS: null, hostTimeMs, channels },
    });
    this.nextIndex += 1;
    this.heardFirst();
  };

  private channels({ acceleration, turning }: MotionReading): BlockChannel[] {
    const forces = axes.map((axis, i) => ({
      quantity: 'acceleration' as const,
      axis,
      unit: 'm/s2',
      samples: Float64Array.of(acceleration[i]!),
    }));
    if (!this.hasTurning || turning === null) return forces;
    const rates = axes.map((axis, i) => ({
      quantity: 'angular-velocity' as const,
      axis,
      unit: 'rad/s',
      samples: Float64Array.of(turning[i]!),
    }));
    return [...forces, ...rates];
  }
}
