import { LowerLine } from './lower-line.ts';

/** How the clock of the device runs beside the clock of the host. */
export interface HostFit {
  /** host time of device time 0, as early as any arrival allows [ms] */
  readonly offsetMs: number;
  /** standard uncertainty of the offset in the middle of the recording, the shortest delay of the radio left aside [ms] */
  readonly offsetUncertaintyMs: number;
  /** how much faster the device counts seconds than the host; below 0 it is slow [ppm] */
  readonly driftPpm: number;
  /** standard uncertainty of the drift [ppm] */
  readonly driftUncertaintyPpm: number;
  /** stretch that was looked at, by the clock of the device [s] */
  readonly spanS: number;
}

/** The earliest arrival, by its delay, of a stretch of time. */
interface Earliest {
  readonly x: number;
  readonly y: number;
}

/** First length of a stretch [s], about the longest interval of a radio; ours. */
const firstStretchS = 0.25;
/** So many stretches at most are remembered: then each two become one; ours. */
const mostStretches = 512;
/** Fewer say nothing of how sure the line is; ours. */
const leastStretches = 24;
/** The clock of a page moves in steps of about this [ms]; from memory. */
const hostStepMs = 0.1;
/**
 * Near the least delay, arrivals lie at random over time and delay, so many to a square of second and second: the line then errs
 * by these multiples of 1/(density x span) in the middle, and of 1/(density x span^2) in its slope. Both are root mean squares of
 * 20,000 simulated lines; the problem has no other scale.
 */
const levelError = 2.6;
const slopeError = 7.3;

/**
 * The line from device time to host time. Arrivals are only ever late, in bursts or after a stall, so it lies below all of them
 * and touches the earliest. Its uncertainty follows from how close the next earliest lie.
 */
export class HostLine {
  private readonly lower = new LowerLine();
  private stretches: Earliest[] = [];
  private stretchS = firstStretchS;
  private stretchEndS = 0;
  private firstMs: number | undefined;

  /** Takes an arrival; one of an earlier device time than the newest is left out. */
  add(deviceS: number, hostMs: number): void {
    const { range } = this.lower;
    if (range !== undefined && deviceS < range.to) return;
    this.firstMs ??= hostMs;
    const y = (hostMs - this.firstMs) / 1000;
    this.lower.add(deviceS, y);
    const last = this.stretches.at(-1);
    if (last === undefined || deviceS >= this.stretchEndS) {
      this.stretches.push({ x: deviceS, y });
      this.stretchEndS = deviceS + this.stretchS;
      if (this.stretches.length > mostStretches) this.merge();
    } else if (y - deviceS < last.y - last.x) {
      this.stretches[this.stretches.length - 1] = { x: deviceS, y };
    }
  }

  /** The fit; null until there is enough to say how sure it is. */
  get fitted(): HostFit | null {
    const { line, range } = this.lower;
    const { stretches, firstMs } = this;
    if (line === undefined || range === undefined || firstMs === undefined) return null;
    if (stretches.length < leastStretches) return null;
    const spanS = range.to - range.from;
    const above = stretches.map(({ x, y }) => Math.max(0, y - line.intercept - line.slope * x)).sort((a, b) => a - b);
    // the two that the line touches say nothing
    const rank = Math.min(14, stretches.length >> 2);
    const perDensity = above[rank - 1]! / (rank - 2);
    const stepS = hostStepMs / 1000;
    // evenly spread within a step at both ends of the line; its level is that of the lowest, a whole step too low at worst
    const slopeUncertainty = Math.hypot(slopeError * perDensity, stepS / Math.sqrt(6)) / spanS;
    return {
      offsetMs: firstMs + 1000 * line.intercept,
      offsetUncertaintyMs: 1000 * Math.hypot(levelError * perDensity, stepS),
      driftPpm: 1e6 * (1 / line.slope - 1),
      driftUncertaintyPpm: (1e6 * slopeUncertainty) / line.slope ** 2,
      spanS,
    };
  }

  private merge(): void {
    const merged: Earliest[] = [];
    for (let i = 0; i < this.stretches.length; i += 2) {
      const one = this.stretches[i]!;
      const other = this.stretches[i + 1] ?? one;
      merged.push(other.y - other.x < one.y - one.x ? other : one);
    }
    this.stretches = merged;
    this.stretchS *= 2;
  }
}
