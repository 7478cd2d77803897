import type { SensorClock } from '@surae/sensors';

const lookEveryMs = 1000;

/** A set that is over is written down first; ours [ms]. */
const afterSetMs = 5000;

/**
 * Locks after a time in which nothing was touched, and never while a set runs: then as soon as it is over and written down. Time goes on while a
 * set runs, so that one that ends by itself with nobody there leaves nothing open.
 */
export class IdleLock {
  private readonly clock: SensorClock;
  private readonly lock: () => void;
  private readonly afterMs: () => number | null;
  private touchedMs: number;
  private isRunning = false;
  private overMs = Number.NEGATIVE_INFINITY;
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
    if (this.isRunning && !isRunning) this.overMs = this.clock.nowMs();
    this.isRunning = isRunning;
  }

  stop(): void {
    this.end();
  }

  private look(): void {
    const afterMs = this.afterMs();
    const nowMs = this.clock.nowMs();
    if (this.isRunning || afterMs === null || nowMs - this.touchedMs < afterMs) return;
    if (nowMs - this.overMs < afterSetMs) return;
    this.stop();
    this.lock();
  }
}
