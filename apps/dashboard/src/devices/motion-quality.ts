import type { MotionReading } from './motion-reading.ts';
import { valueStep } from './value-step.ts';

/** How good the motion that a device tells is, as it was measured while it came. */
export interface MotionQuality {
  readonly readings: number;
  /** readings that were left out because they told no turning though others did */
  readonly incomplete: number;
  /** readings a second over the whole time; null before there are two [Hz] */
  readonly rateHz: number | null;
  /** interval that the browser says it keeps; null when it says none [ms] */
  readonly statedIntervalMs: number | null;
  /** longest time without a reading; null before there are two [ms] */
  readonly longestWaitMs: number | null;
  /** share of readings that repeat the one before in every value: a device at rest, or a reading told twice [-] */
  readonly unchangedShare: number | null;
  /** step of the accelerations; null when none shows [m/s2] */
  readonly accelerationStep: number | null;
  /** step of the turning rates; null when none shows or there are none [rad/s] */
  readonly turningStep: number | null;
}

/** Values that are kept to find the step from: the latest; ours */
const kept = 3000;

/** Measures what comes from a motion sensor. */
export class MotionMeasure {
  private readings = 0;
  private incomplete = 0;
  private unchanged = 0;
  private firstMs = 0;
  private lastMs = 0;
  private longestMs = 0;
  private statedMs: number | null = null;
  private last: readonly number[] = [];
  private readonly forces: number[] = [];
  private readonly rates: number[] = [];

  /** One reading, when it came [ms], and the interval that the browser states [ms]. */
  add({ acceleration, turning }: MotionReading, atMs: number, statedIntervalMs: number | null): void {
    const values = [...acceleration, ...(turning ?? [])];
    if (this.readings === 0) this.firstMs = atMs;
    else {
      this.longestMs = Math.max(this.longestMs, atMs - this.lastMs);
      if (values.length === this.last.length && values.every((value, i) => value === this.last[i])) this.unchanged += 1;
    }
    this.readings += 1;
    this.lastMs = atMs;
    this.last = values;
    this.statedMs = statedIntervalMs;
    this.forces.push(...acceleration);
    this.rates.push(...(turning ?? []));
    for (const list of [this.forces, this.rates]) if (list.length > 2 * kept) list.splice(0, list.length - kept);
  }

  /** A reading that had to be left out. */
  leaveOut(): void {
    this.incomplete += 1;
  }

  /** What was found so far. */
  result(): MotionQuality {
    const { readings, incomplete, firstMs, lastMs } = this;
    const hasSpan = readings > 1 && lastMs > firstMs;
    return {
      readings,
      incomplete,
      rateHz: hasSpan ? ((readings - 1) * 1000) / (lastMs - firstMs) : null,
      statedIntervalMs: this.statedMs,
      longestWaitMs: readings > 1 ? this.longestMs : null,
      unchangedShare: readings > 1 ? this.unchanged / (readings - 1) : null,
      accelerationStep: valueStep(this.forces),
      turningStep: valueStep(this.rates),
    };
  }
}
