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

  /** Time of the newest sample; 0 before there is one [s]. */
  get lastS(): number {
    return this.times[this.used - 1] ?? 0;
  }

  /** Adds a block, one that came too late where it belongs, and gives it as a group for the counter. */
  add(block: SampleBlock): ChannelGroup {
    const { channels, deviceTimesS, isLate } = block;
    if (deviceTimesS === null) throw new RangeError('A block without times of the device cannot be counted.');
    if (this.columns.length === 0) {
      this.heads = channels;
      this.columns = channels.map(() => new Float64Array(this.times.length));
    }
    const needed = this.used + deviceTimesS.length;
    if (needed > this.times.length) this.grow(Math.max(needed, 2 * this.times.length));
    const at = isLate === true ? this.placeOf(deviceTimesS[0] ?? 0) : this.used;
    // views that were given out earlier stay as they are
    if (at < this.used) this.makeRoom(at, deviceTimesS.length);
    this.times.set(deviceTimesS, at);
    channels.forEach(({ samples }, k) => this.columns[k]?.set(samples, at));
    this.used = needed;
    return { timesS: deviceTimesS, channels };
  }

  /** How many samples lie before a time. */
  private placeOf(timeS: number): number {
    let at = this.used;
    while (at > 0 && (this.times[at - 1] ?? 0) > timeS) at--;
    return at;
  }

  /** Copies everything with so many places free from one on. */
  private makeRoom(at: number, count: number): void {
    const parted = (column: Float64Array): Float64Array<ArrayBuffer> => {
      const copy = new Float64Array(column.length);
      copy.set(column.subarray(0, at));
      copy.set(column.subarray(at, this.used), at + count);
      return copy;
    };
    this.times = parted(this.times);
    this.columns = this.columns.map(parted);
  }

  /** Everything so far as one block, units and all; undefined before there is anything. */
  whole(): SampleBlock | undefined {
    if (this.used === 0) return undefined;
    const { timesS, channels } = this.group();
    const units = this.heads.map(({ unit }) => unit);
    const united = channels.map((channel, k) => ({ ...channel, unit: units[k] ?? '1' }));
    return { firstIndex: 0, deviceTimesS: timesS, hostTimeMs: 0, channels: united };
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
