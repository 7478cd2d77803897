import type { SensorClock } from '@surae/sensors';

const lookEveryMs = 1000;

/**
 * Locks after a time in which nothing was touched, and never while a set runs: then as soon as it is over. Time goes on while a
 * set runs, so that one that ends by itself with nobody there leaves nothing open.
 */
export class IdleLock {
  private readonly clock: SensorClock;
  private readonly lock: () => void;
  private readonly afterMs: () => number | null;
  private touchedMs: number;
  private isRunning = false;
  private readonly end: () => void;

  /** @param afterMs - how long it may lie untouched now, null for ever [ms] */
  constructor(clock: SensorClock, afterMs: () => number | null, lock: () => void) {
    this.clock = clock;
    this.afterMs = afterMs;
    this.lock = lock;
    this.touchedMs = clock.nowMs();
    this.end = clock.every(lookEveryMs, () => this.look());
  }

  touched(): void {
    this.touchedMs = this.clock.nowMs();
  }

  /** A set has begun, or it is over. */
  setRuns(isRunning: boolean): void {
    this.isRunning = isRunning;
    this.look();
  }

  stop(): void {
    this.end();
  }

  private look(): void {
    const afterMs = this.afterMs();
    if (this.isRunning || afterMs === null || this.clock.nowMs() - this.touchedMs < afterMs) return;
    this.stop();
    this.lock();
  }
}
