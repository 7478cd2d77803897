import type { ChannelGroup } from '@surae/analysis';
import { type SampleBlock, type Sensor, SensorError, type SensorEvent, type SensorStatus } from '@surae/sensors';

/** A sensor that gives what a test hands it, when the test says so. */
export class HandSensor implements Sensor {
  readonly description = { origin: 'simulated', placement: 'heel', nominalRateHz: 100 } as const;
  status: SensorStatus = 'idle';
  private listener: (event: SensorEvent) => void = () => {};
  private next = 0;

  start(listener: (event: SensorEvent) => void): Promise<void> {
    this.listener = listener;
    this.status = 'streaming';
    return Promise.resolve();
  }

  stop(): void {
    if (this.status !== 'streaming') return;
    this.status = 'ended';
    this.listener({ kind: 'ended' });
  }

  fail(): void {
    this.status = 'failed';
    this.listener({ kind: 'failed', error: new SensorError('lost', 'The cable was pulled.') });
  }

  tell(event: SensorEvent): void {
    this.listener(event);
  }

  give({ timesS, channels }: ChannelGroup, hostTimeMs: number, isLate = false): void {
    const block: SampleBlock = {
      firstIndex: this.next,
      deviceTimesS: timesS,
      hostTimeMs,
      channels: channels.map((channel) => ({ ...channel, unit: 'm' })),
      ...(isLate ? { isLate: true } : {}),
    };
    this.next += timesS.length;
    this.listener({ kind: 'block', block });
  }
}

/** A sensor that cannot begin. */
export class DeadSensor extends HandSensor {
  override start(): Promise<void> {
    return Promise.reject(new SensorError('nothing-recorded', 'There are no samples to play.'));
  }
}
