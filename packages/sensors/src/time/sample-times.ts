/** Share of the difference between what the clock of the device says and what follows from the samples that is taken over; ours. */
const share = 1 / 16;
/** From this stretch on the interval is measured by the clock of the device itself [s]; ours. */
const measuredFromS = 1;
/** More intervals than this away from what follows, the clock has leapt or the device has paused; ours. */
const mostIntervals = 2;

/**
 * Times of samples by the clock of the device, from the first one. Samples are evenly spaced, so neighbours always lie one interval
 * apart, and as many as were lost between them more. Without a clock that is all. A clock that was sent along corrects the course a
 * little at a time, so that the jitter of its stamps makes no holes.
 */
export class SampleTimes {
  private readonly tickS: number | null;
  private readonly toldIntervalS: number;
  private intervalS = 0;
  private firstIndex: number | undefined;
  private anchor: { readonly index: number; readonly ticks: number } | undefined;
  private last: { index: number; timeS: number } | undefined;
  private zeroTicks: number | undefined;
  private zeroS = 0;
  private leaps = 0;

  /** Interval by the word of the maker or as it was measured, and length of a tick, null without a clock [s]. */
  constructor(toldIntervalS: number, tickS: number | null) {
    this.toldIntervalS = toldIntervalS;
    this.tickS = tickS;
  }

  /** How often the clock of the device left the course of the samples. */
  get leapCount(): number {
    return this.leaps;
  }

  /** Interval between samples, by the clock of the device where it has one [s]. */
  get sampleIntervalS(): number {
    return this.intervalS === 0 ? this.toldIntervalS : this.intervalS;
  }

  /** Times of some samples of a packet that follow one another; ticks belong to the first of them, unwrapped [s]. */
  of(index: number, count: number, ticks: number | null): Float64Array {
    this.firstIndex ??= index;
    const { firstIndex, tickS } = this;
    const intervalS = this.sampleIntervalS;
    if (tickS === null) return Float64Array.from({ length: count }, (_, i) => (index + i - firstIndex) * intervalS);
    const startS = this.startOf(index, ticks, tickS);
    const times = Float64Array.from({ length: count }, (_, i) => startS + i * intervalS);
    this.last = { index: index + count - 1, timeS: times[count - 1] ?? startS };
    return times;
  }

  private startOf(index: number, ticks: number | null, tickS: number): number {
    const { last } = this;
    if (ticks !== null) this.measure(index, ticks, tickS);
    const intervalS = this.sampleIntervalS;
    const expectedS = last === undefined ? 0 : last.timeS + (index - last.index) * intervalS;
    if (ticks === null) return expectedS;
    if (last === undefined || this.zeroTicks === undefined) {
      this.zeroTicks = ticks;
      this.zeroS = expectedS;
      return expectedS;
    }
    const saidS = this.zeroS + (ticks - this.zeroTicks) * tickS;
    const offS = saidS - expectedS;
    const allowedS = mostIntervals * intervalS + 2 * tickS + 0.02 * (expectedS - last.timeS);
    if (Math.abs(offS) <= allowedS) {
      return expectedS + Math.max(-intervalS / 4, Math.min(intervalS / 4, share * offS));
    }
    this.leaps += 1;
    this.anchor = { index, ticks };
    if (saidS > last.timeS + intervalS / 2) return saidS;
    // a clock that was set back: the samples go on, and the clock is read anew from here
    this.zeroTicks = ticks;
    this.zeroS = expectedS;
    return expectedS;
  }

  private measure(index: number, ticks: number, tickS: number): void {
    this.anchor ??= { index, ticks };
    const elapsedS = (ticks - this.anchor.ticks) * tickS;
    const count = index - this.anchor.index;
    if (count <= 0 || elapsedS < measuredFromS) return;
    const measuredS = elapsedS / count;
    // a device that paused or dropped samples without counting them tells nothing of its interval
    if (Math.abs(measuredS / this.toldIntervalS - 1) < 0.1) this.intervalS = measuredS;
  }
}
