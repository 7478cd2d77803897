import type { Line, TimeWindow } from './min-max.ts';

/** The heights of the last seconds, for a live picture. */
export class HeightHistory {
  private readonly spanS: number;
  private times: number[] = [];
  private heights: number[] = [];

  constructor(spanS: number) {
    this.spanS = spanS;
  }

  /** Adds a height; one at a time that was added before is left out. After a hole the line begins anew. */
  add(timeS: number, heightM: number, afterHole = false): void {
    const lastS = this.times.at(-1) ?? -Infinity;
    if (timeS <= lastS) return;
    if (afterHole && this.times.length > 0) {
      this.times.push((lastS + timeS) / 2);
      this.heights.push(NaN);
    }
    this.times.push(timeS);
    this.heights.push(heightM);
    // thrown away in bulk, so that it costs nothing for most samples
    if (timeS - (this.times[0] ?? timeS) < 2 * this.spanS) return;
    const from = this.times.findIndex((one) => one >= timeS - this.spanS);
    this.times = this.times.slice(from);
    this.heights = this.heights.slice(from);
  }

  get line(): Line {
    return { timesS: Float64Array.from(this.times), values: Float64Array.from(this.heights) };
  }

  /** The stretch of time that the picture shows: always as long, and its end is the newest height. */
  get window(): TimeWindow {
    const lastS = this.times.at(-1) ?? 0;
    // half-open: the newest is to be seen too
    return { fromS: lastS - this.spanS, toS: lastS + 1e-6 };
  }
}
