import type { SensorClock } from '@surae/sensors';

/** A clock that stands still until it is moved by hand; on each move every timer that is due calls once. */
export class HandClock implements SensorClock {
  private ms: number;
  private readonly timers = new Set<{ readonly intervalMs: number; dueMs: number; readonly call: () => void }>();

  constructor(startMs = 1000) {
    this.ms = startMs;
  }

  nowMs(): number {
    return this.ms;
  }

  every(intervalMs: number, call: () => void): () => void {
    const timer = { intervalMs, dueMs: this.ms + intervalMs, call };
    this.timers.add(timer);
    return () => this.timers.delete(timer);
  }

  /** Number of timers that still run. */
  get running(): number {
    return this.timers.size;
  }

  /** Moves on at once, as after a busy stretch: a timer that missed several of its times calls once. */
  move(ms: number): void {
    this.ms += ms;
    for (const timer of [...this.timers]) {
      // one that another has just ended does not call
      if (timer.dueMs > this.ms || !this.timers.has(timer)) continue;
      timer.dueMs = this.ms + timer.intervalMs;
      timer.call();
    }
  }
}
