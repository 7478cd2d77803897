import type { SensorClock } from './clock.ts';
import { SensorError } from './errors.ts';
import type { Sensor, SensorDescription, SensorEvent, SensorStatus } from './sensor.ts';

export interface HandCountOptions {
  readonly clock: SensorClock;
  /** how many times faster than life its times run; 1 when left out, more for demonstrations and tests [-] */
  readonly pace?: number;
}

/** Two instants of one stream lie at least so far apart [s]; ours: a clock may show one instant twice. */
const leastStepS = 1e-4;

/**
 * Somebody counts by tap: each tap is a sample of 1 at its instant, each that is taken back one of -1, and the beginning and the
 * end of the counting are samples of 0. The sum is the count, and what was taken back stays in the stream.
 */
export class HandCount implements Sensor {
  readonly description: SensorDescription = { origin: 'by-hand', placement: 'hand', nominalRateHz: null };
  private readonly clock: SensorClock;
  private readonly pace: number;
  private state: SensorStatus = 'idle';
  private listener: (event: SensorEvent) => void = () => {};
  private fromMs = 0;
  private lastS = Number.NEGATIVE_INFINITY;
  private sent = 0;
  private standing = 0;

  constructor({ clock, pace = 1 }: HandCountOptions) {
    this.clock = clock;
    this.pace = pace;
  }

  get status(): SensorStatus {
    return this.state;
  }

  /** Taps that stand. */
  get count(): number {
    return this.standing;
  }

  /** Time since the counting began; once it is over, how long it took [s]. */
  get nowS(): number {
    if (this.state === 'ended') return this.lastS;
    return this.state === 'idle' ? 0 : (this.pace * (this.clock.nowMs() - this.fromMs)) / 1000;
  }

  start(listener: (event: SensorEvent) => void): Promise<void> {
    if (this.state !== 'idle') {
      return Promise.reject(new SensorError('already-started', 'Somebody counts already.'));
    }
    this.listener = listener;
    this.fromMs = this.clock.nowMs();
    this.state = 'streaming';
    this.send(0);
    return Promise.resolve();
  }

  /** One more raise, now. Does nothing while nobody counts. */
  tap(): void {
    if (this.state !== 'streaming') return;
    this.standing += 1;
    this.send(1);
  }

  /** The last tap that stands was none. Does nothing where none stands. */
  takeBack(): void {
    if (this.state !== 'streaming' || this.standing === 0) return;
    this.standing -= 1;
    this.send(-1);
  }

  stop(): void {
    if (this.state !== 'streaming') return;
    this.send(0);
    this.state = 'ended';
    this.listener({ kind: 'ended' });
  }

  private send(change: number): void {
    this.lastS = Math.max(this.nowS, this.lastS + leastStepS);
    const block = {
      firstIndex: this.sent,
      deviceTimesS: Float64Array.of(this.lastS),
      hostTimeMs: this.clock.nowMs(),
      channels: [{ quantity: 'tap', axis: null, unit: '1', samples: Float64Array.of(change) }],
    } as const;
    this.sent += 1;
    this.listener({ kind: 'block', block });
  }
}
