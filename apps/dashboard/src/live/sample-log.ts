import type { ChannelGroup } from '@surae/analysis';
import type { SampleBlock } from '@surae/sensors';

/** Samples that have arrived, growing: times and channels, each in one array that has room to spare. */
export class SampleLog {
  private times = new Float64Array(4096);
  private columns: Float64Array[] = [];
  private heads: SampleBlock['channels'] = [];
  private used = 0;

  get length(): number {
    return this.used;
  }

  /** Adds a block and gives it as a group for the counter. */
  add(block: SampleBlock): ChannelGroup {
    const { channels, deviceTimesS } = block;
    if (deviceTimesS === null) throw new RangeError('A block without times of the device cannot be counted.');
    if (this.columns.length === 0) {
      this.heads = channels;
      this.columns = channels.map(() => new Float64Array(this.times.length));
    }
    const needed = this.used + deviceTimesS.length;
    if (needed > this.times.length) this.grow(Math.max(needed, 2 * this.times.length));
    this.times.set(deviceTimesS, this.used);
    channels.forEach(({ samples }, k) => this.columns[k]?.set(samples, this.used));
    this.used = needed;
    return { timesS: deviceTimesS, channels };
  }

  /** All samples so far; views that stay as they are while more samples come. */
  group(): ChannelGroup {
    return {
      timesS: this.times.subarray(0, this.used),
      channels: this.heads.map(({ quantity, axis }, k) => ({
        quantity,
        axis,
        samples: (this.columns[k] ?? new Float64Array(0)).subarray(0, this.used),
      })),
    };
  }

  private grow(size: number): void {
    const wider = (column: Float64Array): Float64Array<ArrayBuffer> => {
      const more = new Float64Array(size);
      more.set(column);
      return more;
    };
    this.times = wider(this.times);
    this.columns = this.columns.map(wider);
  }
}
