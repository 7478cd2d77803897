import type { BlockChannel, SampleBlock } from '@surae/sensors';
import { HoleWatch } from './hole-watch.ts';
import type { Line, TimeWindow } from './min-max.ts';

/** The samples of the last seconds of every channel, for a live picture. What comes too late stays a hole in it. */
export class SignalHistory {
  private readonly spanS: number;
  private readonly holes = new HoleWatch();
  private times: number[] = [];
  private columns: number[][] = [];
  private heads: readonly BlockChannel[] = [];

  constructor(spanS: number) {
    this.spanS = spanS;
  }

  /** the channels, once samples have come */
  get channels(): readonly Omit<BlockChannel, 'samples'>[] {
    return this.heads;
  }

  add(block: SampleBlock): void {
    const { deviceTimesS, channels, isLate } = block;
    if (deviceTimesS === null || deviceTimesS.length === 0 || isLate === true) return;
    if (this.heads.length === 0) {
      this.heads = channels;
      this.columns = channels.map(() => []);
    }
    if (this.holes.isAfterHole(block)) {
      this.times.push(((this.times.at(-1) ?? 0) + (deviceTimesS[0] ?? 0)) / 2);
      for (const column of this.columns) column.push(NaN);
    }
    this.times.push(...deviceTimesS);
    this.columns.forEach((column, k) => column.push(...(channels[k]?.samples ?? [])));
    this.forget();
  }

  /** The newest value of each channel. */
  get latest(): readonly number[] {
    return this.columns.map((column) => column.at(-1) ?? NaN);
  }

  line(channel: number): Line {
    return { timesS: Float64Array.from(this.times), values: Float64Array.from(this.columns[channel] ?? []) };
  }

  /** Always as long, and its end is the newest sample. */
  get window(): TimeWindow {
    const lastS = this.times.at(-1) ?? 0;
    // half-open: the newest is to be seen too
    return { fromS: lastS - this.spanS, toS: lastS + 1e-6 };
  }

  /** Thrown away in bulk, so that it costs nothing for most blocks. */
  private forget(): void {
    const lastS = this.times.at(-1) ?? 0;
    if (lastS - (this.times[0] ?? lastS) < 2 * this.spanS) return;
    const from = this.times.findIndex((one) => one >= lastS - this.spanS);
    this.times = this.times.slice(from);
    this.columns = this.columns.map((column) => column.slice(from));
  }
}
