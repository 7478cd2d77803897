import type { BlockChannel, SampleBlock } from './block.ts';
import type { SensorClock } from './clock.ts';
import { SensorError } from './errors.ts';
import type { Sensor, SensorDescription, SensorEvent, SensorStatus } from './sensor.ts';

/** Samples that are there already, to be played as if they came now. */
export interface PlayedGroup {
  /** native sample times, strictly rising [s] */
  readonly timesS: Float64Array;
  readonly channels: readonly BlockChannel[];
}

export interface PlaybackOptions {
  readonly description: SensorDescription;
  readonly clock: SensorClock;
  /** how many times faster than they were recorded, > 0 */
  readonly pace: number;
  /** how often samples that are due are handed over [ms] */
  readonly intervalMs: number;
}

/**
 * Plays samples at their own times, or faster. A host that was busy gets what is due in one block: none is lost, and their
 * own times say when they belong.
 */
export class Playback implements Sensor {
  readonly description: SensorDescription;
  private readonly group: PlayedGroup;
  private readonly options: PlaybackOptions;
  private listener: (event: SensorEvent) => void = () => {};
  private endTicks: () => void = () => {};
  private startedMs = 0;
  private next = 0;
  private state: SensorStatus = 'idle';

  constructor(group: PlayedGroup, options: PlaybackOptions) {
    this.group = group;
    this.options = options;
    this.description = options.description;
  }

  get status(): SensorStatus {
    return this.state;
  }

  async start(listener: (event: SensorEvent) => void): Promise<void> {
    const { clock, intervalMs } = this.options;
    if (this.state !== 'idle') throw new SensorError('already-started', 'This source has streamed before.');
    if (this.group.timesS.length === 0) throw new SensorError('nothing-recorded', 'There are no samples to play.');
    await Promise.resolve();
    this.listener = listener;
    this.state = 'streaming';
    this.startedMs = clock.nowMs();
    this.endTicks = clock.every(intervalMs, () => this.tick());
  }

  stop(): void {
    if (this.state !== 'streaming') return;
    this.handOver();
    this.end();
  }

  private tick(): void {
    this.handOver();
    if (this.next >= this.group.timesS.length) this.end();
  }

  private end(): void {
    if (this.state !== 'streaming') return;
    this.endTicks();
    this.state = 'ended';
    this.listener({ kind: 'ended' });
  }

  /** Hands over all samples whose time has come. */
  private handOver(): void {
    const { timesS, channels } = this.group;
    const { clock, pace } = this.options;
    const hostTimeMs = clock.nowMs();
    const zeroS = timesS[0] ?? 0;
    const dueS = zeroS + ((hostTimeMs - this.startedMs) / 1000) * pace;
    const firstIndex = this.next;
    let to = firstIndex;
    while (to < timesS.length && (timesS[to] ?? Infinity) <= dueS) to++;
    if (to === firstIndex) return;
    this.next = to;
    const block: SampleBlock = {
      firstIndex,
      deviceTimesS: timesS.slice(firstIndex, to).map((timeS) => timeS - zeroS),
      hostTimeMs,
      channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(firstIndex, to) })),
    };
    this.listener({ kind: 'block', block });
  }
}
